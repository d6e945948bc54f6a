package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table copied from a spreadsheet becomes trials, or none of it does. */
class TableOfTrialsTest {
  private static final String HEADS = "name\tstarch\tglycerol g\twater ml\twet mm\tplate\tpoured\n";
  private static final String FIRST =
      "Old one\tpotato 20 g\t6\t360\t3\tglass 30x20 cm\t2026-03-02\n";

  @Test
  void pastedRowsBecomeTrials(@Served RunningSite site) throws IOException {
    HttpResponse<String> saved =
        site.post(
            "/trials/table",
            "table",
            HEADS + FIRST + "Another\tcorn 18 g\t7\t300\t2\tglass 30x20 cm\t2026-03-09\n");

    String page =
        Jsoup.parse(site.get(saved.headers().firstValue("Location").orElseThrow()).body()).text();
    assertThat(page).contains("2 trials saved.", "Old one", "Another");
    assertThat(page).contains("Still drying, as far as is noted: 2.");
    assertThat(Files.readString(site.folder().resolve("old-one.json")))
        .contains("\"kind\" : \"potato\"", "\"poured_at\" : \"2026-03-02\"");
  }

  @ParameterizedTest
  @CsvSource({
    "4, 5, rating, each cell is a number from 1 to 5",
    "4, a bit sticky, remarks, not each cell is a number from 1 to 5"
  })
  void aColumnCalledNoteIsRatingOrRemarksAndThatIsSaid(
      String first, String second, String key, String why, @Served RunningSite site)
      throws IOException {
    HttpResponse<String> saved =
        site.post(
            "/trials/table",
            "table",
            HEADS.replace("poured", "Note") + row("One", first) + row("Two", second));

    String page =
        Jsoup.parse(site.get(saved.headers().firstValue("Location").orElseThrow()).body()).text();
    assertThat(page).contains("\"Note\" is read as " + key + ", for " + why);
    assertThat(Files.readString(site.folder().resolve("two.json"))).contains('"' + key + '"');
  }

  @Test
  void wrongCellIsNamedAndNothingIsWritten(@Served RunningSite site) throws IOException {
    String typed = HEADS + FIRST + "Bad\tcorn 18 g\tmuch\t300\t2\tglass 30x20 cm\t2026-03-09\n";

    HttpResponse<String> refused = site.post("/trials/table", "table", typed);

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(Jsoup.parse(refused.body()).select(".refusal").text())
        .contains("the table, line 3, column 3")
        .contains("\"much\" given");
    assertThat(Jsoup.parse(refused.body()).select("#table").first().wholeText().strip())
        .isEqualTo(typed.strip());
    assertThat(trials(site)).isEmpty();
  }

  @Test
  void rowThatCannotBeWrittenLeavesNoneOfTheTable(@Served RunningSite site) throws IOException {
    String long2Mb = ("word ".repeat(990) + ";").repeat(430);
    String typed = HEADS.replace("poured", "remarks") + row("One", "short") + row("Two", long2Mb);

    HttpResponse<String> refused = site.post("/trials/table", "table", typed);

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("keep a trial below 2 MB");
    assertThat(trials(site)).isEmpty();
  }

  @Test
  void asksWhichTableIsMeantWhereOneIsPastedAndAnotherChosen(@Served RunningSite site)
      throws IOException {
    String form =
        part("token", site.token())
            + part("table", HEADS + FIRST)
            + part("file\"; filename=\"old.csv", HEADS + FIRST)
            + "--cut--\r\n";

    HttpResponse<String> refused =
        site.send(
            HttpRequest.newBuilder(site.uri("/trials/table"))
                .header("Content-Type", "multipart/form-data; boundary=cut")
                .POST(HttpRequest.BodyPublishers.ofString(form)));

    assertThat(refused.body()).contains("Two tables were given; nothing was saved");
    assertThat(trials(site)).isEmpty();
  }

  @Test
  void saysHowAWorkbookBecomesATable(@Served RunningSite site) {
    byte[] workbook = {'P', 'K', 3, 4, 20, 0, 6, 0};

    assertThat(site.postFile("/trials/table", "file", "", "old.xlsx", workbook).body())
        .contains("the workbook of a spreadsheet given", "save it as CSV");
  }

  @Test
  void refusesMoreRowsThanANotebookHolds(@Served RunningSite site) throws IOException {
    String typed = HEADS + FIRST.repeat(1_001);

    assertThat(site.post("/trials/table", "table", typed).body())
        .contains("1001 rows given, allowed at most 1000");
    assertThat(trials(site)).isEmpty();
  }

  private static String row(String name, String last) {
    return FIRST.replace("Old one", name).replace("2026-03-02", last);
  }

  private static String part(String name, String content) {
    return "--cut\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n"
        .formatted(name, content);
  }

  private static List<String> trials(RunningSite site) throws IOException {
    try (Stream<Path> files = Files.list(site.folder())) {
      return files.map(Path::toString).filter(name -> name.endsWith(".json")).toList();
    }
  }

  @Test
  void asksForATableWhereNoneWasGiven(@Served RunningSite site) {
    assertThat(site.post("/trials/table", "table", "").body()).contains("No table was given");
  }
}
