package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.web.Served.Content;

/** What becomes of a note that is refused or asked about. */
class RefusedNoteTest {
  private Path file;
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.DRYING) RunningSite served) {
    site = served;
    file = site.folder().resolve(DryingTrial.FILE);
  }

  @Test
  void asksBeforeAPlateThatGainedIsNoted() throws IOException {
    site.post(
        "/trial/note",
        "file",
        DryingTrial.FILE,
        "kind",
        "weighed",
        "mass",
        "660",
        "at",
        "2026-04-20T11:58");
    String before = Files.readString(file);

    HttpResponse<String> asked =
        site.post("/plates/weigh", "file", DryingTrial.FILE, "kind", "weighed", "mass", "690");
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body())
        .contains(
            "This would be a film 30 g heavier than 2 minutes before, so it is not noted yet.")
        .contains("Save anyway", "It is another plate", "Change");
    assertThat(Files.readString(file)).isEqualTo(before);

    HttpResponse<String> other =
        site.post(
            "/plates/weigh",
            "file",
            DryingTrial.FILE,
            "kind",
            "weighed",
            "mass",
            "690",
            "same",
            "no");
    String there = other.headers().firstValue("Location").orElseThrow().replaceFirst("#.*", "");
    assertThat(site.get(there).body())
        .contains("Noted: weighed 690 g, Mon 20 Apr, 12:00, another plate.");
    assertThat(site.get("/plates/all").body()).contains("Last weighed Mon 20 Apr, morning: 62 g");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "weighed|mass|heavy|weight: &quot;heavy&quot; given",
        "weighed|mass|9000|The weight: a film of",
        "thickness|um||fill in this field",
        "rated|rating|6|rating: &quot;6&quot; given, allowed 1 to 5",
        "fault|what|exploded|fault: &quot;exploded&quot; given, allowed cracked, broke apart",
        "poured|at|2026-02-30T10:00|time of the pour",
        "moved|at|2026-12-25T10:00|time: &quot;2026-12-25T10:00&quot; given, allowed a time up to"
            + " now"
      })
  void keepsWhatWasTypedAndSaysWhatIsWrong(String kind, String field, String typed, String sentence)
      throws IOException {
    String before = Files.readString(file);

    HttpResponse<String> answer =
        site.post(
            "/trial/note",
            "file",
            DryingTrial.FILE,
            "kind",
            kind,
            field,
            typed == null ? "" : typed);

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("class=\"refusal\"");
    assertThat(answer.body()).contains(sentence);
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void keepsWhatWasTypedOfThePot() {
    String page =
        site.post(
                "/trial/note",
                "file",
                DryingTrial.FILE,
                "kind",
                "weighed-out",
                "pot-0",
                "a lot",
                "pot-1",
                "5.5")
            .body();

    assertThat(Jsoup.parse(page).select("#pot-0, #pot-1").eachAttr("value"))
        .containsExactly("a lot", "5.5");
    assertThat(Jsoup.parse(page).select("#note-why").hasAttr("autofocus")).isTrue();
  }

  /** The reason has the focus unless an input has it, and never both. */
  @Test
  void whatTakesTheFocusOfARefusedNoteIsAnInputOfItsForms() throws IOException {
    String forms = Files.readString(Path.of("templates", "web", "notes.html"));
    Set<String> inputs = new TreeSet<>(Set.of("at", "plate"));
    Pattern.compile(":: amount\\('[a-z-]+', '([a-z_]+)'")
        .matcher(forms)
        .results()
        .forEach(input -> inputs.add(input.group(1)));
    Matcher listed = Pattern.compile("listSplit\\('([a-z_,]+)'").matcher(forms);

    assertThat(listed.find()).isTrue();
    assertThat(listed.group(1).split(",")).containsExactlyInAnyOrderElementsOf(inputs);
  }

  @Test
  void saysWithoutTheFilesWordsThatAPlateWasWeighedThenAlready() {
    String[] weighing = {
      "file", DryingTrial.FILE, "kind", "weighed", "mass", "690.5", "at", "2026-04-20T10:00"
    };
    site.post("/trial/note", weighing);

    assertThat(site.post("/trial/note", weighing).body())
        .contains("The time: a second weighing at the same time given");
  }

  @Test
  void refusesAFileThatIsNoPicture() throws IOException {
    HttpResponse<String> answer =
        site.postPhoto(
            DryingTrial.FILE,
            "a.png",
            "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8));

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("a.png: ").contains("JPEG, PNG or GIF");
    try (Stream<Path> files = Files.list(site.folder())) {
      assertThat(files.map(f -> String.valueOf(f.getFileName())))
          .noneMatch(name -> name.contains("photo"));
    }
  }

  @Test
  void saysSoWhenAPhotoIsTooLarge() {
    byte[] large = new byte[33_000_000];
    Arrays.fill(large, (byte) 7);

    HttpResponse<String> answer = site.postPhoto(DryingTrial.FILE, "a.jpg", large);

    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.body()).contains("larger than 32 MB");
  }
}
