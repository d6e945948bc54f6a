package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.proof.SmallDisk;

/**
 * A disk that is full, or that may only be read, told on the page: one sentence, what was typed
 * still in its field, and no file changed. {@link SmallDisk} says when it runs.
 */
@Timeout(600)
class FullDiskPagesTest {
  private static final String FULL = "the disk is full; nothing was changed; make room";
  private static final String READ_ONLY = "may not be written to; nothing was changed; give";

  private static final LocalDateTime POURED = LocalDateTime.parse("2026-04-19T10:00");

  @TempDir private Path folder;
  private int refused;

  @Test
  void aFullDisk() throws Exception {
    int saved = 0;
    try (SmallDisk disk = SmallDisk.at(folder, "4m")) {
      writeNotebook();
      try (RunningSite site = RunningSite.over(folder)) {
        learn(site);
        for (int free = 0; free < 130; free += 2) {
          disk.leave(free * 1_024L);
          saved += sendEveryForm(site, FULL, free);
        }
      }
    }
    assertThat(refused).isPositive();
    assertThat(saved).isPositive();
    System.out.printf("disk full at %d of %d forms; nothing lost%n", refused, refused + saved);
  }

  @Test
  void aDiskThatMayOnlyBeRead() throws Exception {
    try (SmallDisk disk = SmallDisk.at(folder, "4m")) {
      writeNotebook();
      disk.makeReadOnly();
      try (RunningSite site = RunningSite.over(folder)) {
        assertThat(sendEveryForm(site, READ_ONLY, 0)).isZero();
      }
    }
  }

  private void writeNotebook() throws IOException {
    String text = DryingTrial.textNamed("On the shelf");
    Files.writeString(
        folder.resolve(DryingTrial.FILE),
        text.replaceFirst("\\{", "{\n  \"_mine\": \"" + "x".repeat(30_000) + "\","));
    Files.copy(Path.of("formulations/garden/4-blend.json"), folder.resolve("4-blend.json"));
  }

  /** Sends each form once; the number that were saved. */
  private int sendEveryForm(RunningSite site, String why, int number) throws IOException {
    String mass = 740 - number % 100 + ".25";
    LocalDateTime at = POURED.plusHours(1).plusMinutes(2 * number);
    LocalDateTime later = at.plusMinutes(1);
    int saved = 0;
    saved +=
        sent(
            () -> note(site, "/trial/note", "kind", "weighed", "mass", mass, "at", "" + at),
            why,
            "value=\"" + mass + "\"");
    saved +=
        sent(
            () -> note(site, "/trial/note", "kind", "fault", "what", "bubbles", "remark", mass),
            why,
            "value=\"" + mass + "\"");
    saved +=
        sent(
            () -> note(site, "/plates/weigh", "kind", "weighed", "mass", mass, "at", "" + later),
            why,
            "value=\"" + mass + "\"");
    saved +=
        sent(
            () -> edit(site, "/trial/edit", "f.recipe.water.mass_g", mass),
            why,
            "value=\"" + mass + "\"");
    saved += sent(() -> edit(site, "/trial/text", "text", textWith("9" + mass)), why, ": 9" + mass);
    byte[] photo = Arrays.copyOf(PageClient.PIXEL, 20_000);
    saved += sent(() -> site.postPhoto(DryingTrial.FILE, "phone.png", photo), why, "phone.png");
    saved += sent(() -> note(site, "/trial/again", "name", "Again " + number), why, "");
    saved += sent(() -> learn(site), why, "workshop.json: ");
    return saved;
  }

  private interface SentForm {
    HttpResponse<String> send() throws IOException;
  }

  private int sent(SentForm form, String why, String kept) throws IOException {
    Map<String, String> before = contents();
    HttpResponse<String> answer = form.send();
    if (answer.statusCode() == 303) {
      return 1;
    }
    refused++;
    assertThat(answer.statusCode()).isIn(422, 500);
    assertThat(Jsoup.parse(answer.body()).select(".refusal, .refused .headline").eachText())
        .as(kept)
        .hasSize(1)
        .allMatch(sentence -> sentence.contains(why) && !sentence.contains("/"));
    assertThat(answer.body()).contains(kept);
    assertThat(contents()).isEqualTo(before);
    return 0;
  }

  private static HttpResponse<String> note(RunningSite site, String path, String... typed) {
    return site.post(path, Stream.concat(file(), Stream.of(typed)).toArray(String[]::new));
  }

  private static Stream<String> file() {
    return Stream.of("file", DryingTrial.FILE);
  }

  private static HttpResponse<String> edit(
      RunningSite site, String path, String field, String typed) {
    String page = site.get(path + "?file=" + DryingTrial.FILE).body();
    return note(site, path, "version", RunningSite.hidden(page, "version"), field, typed);
  }

  private String textWith(String water) throws IOException {
    return Files.readString(folder.resolve(DryingTrial.FILE))
        .replaceFirst("(\"water\": \\{\"mass_g\": )[0-9.]+", "$1" + water);
  }

  private static HttpResponse<String> learn(RunningSite site) {
    HttpResponse<String> answer = site.post("/learn");
    while (answer.statusCode() == 200) {
      answer = site.get("/learnt/working");
    }
    return answer;
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(FullDiskPagesTest::isOfTheNotebook).toList()) {
        contents.put(
            String.valueOf(file.getFileName()),
            Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return contents;
  }

  private static boolean isOfTheNotebook(Path file) {
    return !file.endsWith(".starchfilm.lock") && !file.endsWith("filler");
  }
}
