package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

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
    assertThat(Files.readString(site.folder().resolve("old-one.json")))
        .contains("\"kind\" : \"potato\"", "\"poured_at\" : \"2026-03-02T12:00\"");
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
    try (var files = Files.list(site.folder())) {
      assertThat(files.map(Path::toString).filter(name -> name.endsWith(".json"))).isEmpty();
    }
  }

  @Test
  void asksForATableWhereNoneWasGiven(@Served RunningSite site) {
    assertThat(site.post("/trials/table", "table", "").body()).contains("No table was given");
  }
}
