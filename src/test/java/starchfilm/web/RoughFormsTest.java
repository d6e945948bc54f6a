package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.learning.Workshop;
import starchfilm.proof.Cases;
import starchfilm.proof.RoughJson;
import starchfilm.proof.RoughWords;

/** Whatever is put into the forms of the pages, they answer, and no trial is spoilt. */
class RoughFormsTest {
  @TempDir private Path folder;

  private record Form(String action, boolean post, List<String> fields) {}

  @Test
  void everyFormAnswers() throws IOException {
    try (RunningSite site = RunningSite.overGarden(folder)) {
      Map<String, byte[]> garden = contents();
      List<Form> forms = List.copyOf(forms(site));
      assertThat(forms.stream().filter(Form::post)).isNotEmpty();
      Cases.forEach(
          30,
          (random, number) -> {
            Form form = RoughJson.any(forms, random);
            String[] fields = filled(form, random);
            Map<String, byte[]> before = contents();
            HttpResponse<String> answer =
                form.post()
                    ? site.post(form.action(), fields)
                    : site.get(address(form.action(), fields));
            String typed = form.action() + " " + String.join("|", fields);
            assertThat(answer.statusCode()).as(typed).isLessThan(500);
            assertThat(answer.body()).as(typed).doesNotContain("\tat ", "Exception:", "java.lang");
            nothingIsLost(before, typed);
            if (random.nextInt(20) == 0) {
              restore(garden);
            }
          });
    }
  }

  /** A trial that was changed still reads as one, and its last version lies beside it. */
  private void nothingIsLost(Map<String, byte[]> before, String typed)
      throws IOException, UnreadableFileException {
    Map<String, byte[]> now = contents();
    for (String name : before.keySet()) {
      boolean moved =
          now.get(name) == null || !java.util.Arrays.equals(now.get(name), before.get(name));
      if (moved && name.endsWith(".json")) {
        assertThat(now.get(name + ".before"))
            .as("%s after %s", name, typed)
            .isEqualTo(before.get(name));
      }
    }
    for (String name : now.keySet()) {
      if (name.equals(Workshop.FILE_NAME)) {
        assertThat(Workshop.read(folder).isTaught()).as("%s after %s", name, typed).isTrue();
      } else if (name.endsWith(".json")
          && !java.util.Arrays.equals(now.get(name), before.get(name))) {
        assertThat(NotebookReader.read(List.of(folder.resolve(name))).faults())
            .as("%s after %s", name, typed)
            .isEmpty();
      }
    }
  }

  private static String[] filled(Form form, Random random) {
    List<String> fields = new ArrayList<>();
    for (String field : form.fields()) {
      if (random.nextInt(6) == 0) {
        continue;
      }
      String[] nameAndValue = field.split("=", 2);
      fields.add(random.nextInt(40) == 0 ? RoughWords.any(random) : nameAndValue[0]);
      fields.add(random.nextInt(3) == 0 ? RoughWords.any(random) : nameAndValue[1]);
    }
    return fields.toArray(String[]::new);
  }

  /** Every form of every page that can be reached, its fields with what stands in them. */
  private static Set<Form> forms(RunningSite site) {
    Set<Form> forms = new LinkedHashSet<>();
    Set<String> seen = new LinkedHashSet<>(List.of("/", "/trials"));
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty() && seen.size() < 60) {
      HttpResponse<String> page = site.getMade(open.pop());
      if (page.statusCode() != 200) {
        continue;
      }
      org.jsoup.nodes.Document html = Jsoup.parse(page.body(), site.address());
      for (Element form : html.select("form")) {
        if (!form.attr("action").contains("/stop")) {
          forms.add(form(form));
        }
      }
      for (Element link : html.select("a[href^=/]")) {
        if (seen.add(link.attr("href"))) {
          open.add(link.attr("href"));
        }
      }
    }
    return forms;
  }

  private static Form form(Element form) {
    List<String> fields = new ArrayList<>();
    for (Element field : form.select("[name]")) {
      String value =
          field.is("select")
              ? field.select("option").eachAttr("value").stream().findFirst().orElse("")
              : field.is("textarea") ? field.wholeText() : field.val();
      if (!field.attr("name").equals("token")) {
        fields.add(field.attr("name") + "=" + value);
      }
    }
    return new Form(form.attr("action"), form.attr("method").equalsIgnoreCase("post"), fields);
  }

  private static String address(String action, String[] fields) {
    StringBuilder address = new StringBuilder(action.contains("?") ? action : action + "?");
    for (int i = 0; i < fields.length; i += 2) {
      address.append('&').append(encoded(fields[i])).append('=').append(encoded(fields[i + 1]));
    }
    return address.toString();
  }

  private static String encoded(String text) {
    String cut = text.substring(0, Math.min(300, text.length()));
    return java.net.URLEncoder.encode(cut, StandardCharsets.UTF_8);
  }

  private void restore(Map<String, byte[]> garden) throws IOException {
    for (String name : contents().keySet()) {
      if (!garden.containsKey(name)) {
        Files.delete(folder.resolve(name));
      }
    }
    for (Map.Entry<String, byte[]> file : garden.entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue());
    }
  }

  private Map<String, byte[]> contents() throws IOException {
    Map<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(
            folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return contents;
  }
}
