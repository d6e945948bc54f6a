package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import starchfilm.files.saving.NotedLine;
import starchfilm.web.Served.Content;

class TodayPageTest {
  @Test
  void isTheFirstPageOnceThereAreTrials(
      @Served({Content.GARDEN, Content.DRYING}) RunningSite site) {
    assertThat(site.get("/").headers().firstValue("Location")).hasValue("/today");
    assertThat(site.get("/today/all").body())
        .contains("Monday 20 April 2026, 12:00")
        .contains("Weigh On the shelf now")
        .contains("class=\"now\"");
  }

  @Test
  void opensTheTrialsWhereThereAreNone(@Served RunningSite site) {
    assertThat(site.get("/").headers().firstValue("Location")).hasValue("/trials");
    assertThat(site.get("/today").body()).contains("No plate is drying.");
  }

  @Test
  void weighsPlatesOfOnePourEachByItself(@Served(Content.DRYING) RunningSite site)
      throws IOException {
    Path file = site.folder().resolve(DryingTrial.FILE);
    Files.writeString(
        file, Files.readString(file).replace("\"poured_g\"", "\"plates\": 2, \"poured_g\""));
    assertThat(site.get("/plates/all").body())
        .contains("Plate 1 weighs, g")
        .contains("Plate 2 weighs, g");

    String back =
        site.post(
                "/plates/weigh",
                "file",
                DryingTrial.FILE,
                "kind",
                "weighed",
                "mass",
                "691",
                "plate",
                "2")
            .headers()
            .firstValue("Location")
            .orElseThrow();

    assertThat(Files.readString(file)).containsPattern("\"plate\" *: *2");
    assertThat(site.getMade(back).body()).contains("Noted: plate 2 weighed 691 g");
    assertThat(site.getMade(back).body()).containsPattern("tabindex=\"-1\" autofocus");
    assertThat(site.get("/today/all").body())
        .contains("On the shelf, plate 1")
        .contains("On the shelf, plate 2");
  }

  @Test
  void putsTheCursorIntoTheNextField(@Served(Content.DRYING) RunningSite site) throws IOException {
    Files.writeString(site.folder().resolve("second.json"), DryingTrial.textNamed("Second"));
    String back =
        site.post("/plates/weigh", "file", DryingTrial.FILE, "kind", "weighed", "mass", "691")
            .headers()
            .firstValue("Location")
            .orElseThrow();

    assertThat(site.getMade(back).body())
        .containsPattern("id=\"mass-trial-second-json\"[^>]*autofocus");
  }

  @Test
  void correctsTheTimeOfANotedLine(@Served(Content.DRYING) RunningSite site) throws Exception {
    site.post(
        "/trial/note",
        "file",
        DryingTrial.FILE,
        "kind",
        "fault",
        "what",
        "cracked",
        "where",
        "edge");
    String was =
        NotedLine.of(Files.readString(site.folder().resolve(DryingTrial.FILE))).stream()
            .filter(line -> line.name().equals("fault 1"))
            .map(NotedLine::seen)
            .findFirst()
            .orElseThrow();

    int status =
        site.post(
                "/trial/note",
                "file",
                DryingTrial.FILE,
                "kind",
                "correct",
                "line",
                "fault 1",
                "was",
                was,
                "value",
                "19.4.2026 12:30")
            .statusCode();

    assertThat(status).isEqualTo(303);
    assertThat(Files.readString(site.folder().resolve(DryingTrial.FILE)))
        .contains("\"at\": \"2026-04-19T12:30\"");
  }

  @Test
  void correctsAndRemovesANotedLineUnlessItChangedMeanwhile(
      @Served(Content.DRYING) RunningSite site) throws IOException {
    Path file = site.folder().resolve(DryingTrial.FILE);
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "remark", "words", "cloudy");
    String page = site.get("/trial?file=" + DryingTrial.FILE).body();
    assertThat(page).contains("Noted so far").contains("Correct it").contains("Remove it");

    assertThat(
            site.post(
                    "/trial/note",
                    "file",
                    DryingTrial.FILE,
                    "kind",
                    "correct",
                    "line",
                    "remark 1",
                    "was",
                    "\"cloudy\"",
                    "value",
                    "clear")
                .statusCode())
        .isEqualTo(303);
    assertThat(Files.readString(file)).contains("clear").doesNotContain("cloudy");

    assertThat(
            site.post(
                    "/trial/note",
                    "file",
                    DryingTrial.FILE,
                    "kind",
                    "drop",
                    "line",
                    "remark 1",
                    "was",
                    "\"cloudy\"")
                .body())
        .contains("it was changed meanwhile");
    site.post(
        "/trial/note",
        "file",
        DryingTrial.FILE,
        "kind",
        "drop",
        "line",
        "remark 1",
        "was",
        "\"clear\"");
    assertThat(Files.readString(file)).doesNotContain("remarks");
  }

  @Test
  void putsATrialAwayAndOffersToFetchItBack(@Served(Content.DRYING) RunningSite site) {
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "put-away");

    assertThat(site.get("/today").body()).contains("No plate is drying.");
    assertThat(site.get("/trials").body()).contains("Put away (1)").contains("Fetch it back");
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "fetch-back");
    assertThat(site.get("/today/all").body()).contains("On the shelf");
  }
}
