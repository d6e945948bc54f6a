package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.web.Served.Content;

class TrialPageTest {
  private Path file;
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.DRYING) RunningSite served) {
    site = served;
    file = site.folder().resolve(DryingTrial.FILE);
  }

  @Test
  void aRatedTrialBeginsWithHowItWent() throws IOException {
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "rated", "rating", "4");

    String page = site.get("/trial/forecast?file=" + DryingTrial.FILE).body();
    assertThat(page)
        .containsSubsequence(
            "class=\"headline\">Rated 4 of 5, without a fault.<", "The forecast: ");
  }

  @Test
  void notesAWeighingAndSaysSo() throws IOException {
    HttpResponse<String> answer =
        site.post("/trial/note", "file", DryingTrial.FILE, "kind", "weighed", "mass", "690,5");

    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(Files.readString(file))
        .contains("{\"at\": \"2026-04-20T12:00\", \"mass_g\": 690.5}")
        .contains("\"mass_g\": 12.0, \"moisture_pct\": 17");
    assertThat(site.get(answer.headers().firstValue("Location").orElseThrow()).body())
        .contains("Noted: weighed 690.5 g, Mon 20 Apr, 12:00.", ">Undo</button>");
  }

  @Test
  void takesBackWhatWasNotedAndPutsItBack() throws IOException {
    String before = Files.readString(file);
    HttpResponse<String> noted =
        site.post("/trial/note", "file", DryingTrial.FILE, "kind", "remark", "words", "Odd.");
    String with = Files.readString(file);

    HttpResponse<String> undone = undo(noted);
    assertThat(Files.readString(file)).isEqualTo(before);
    HttpResponse<String> again = undo(undone);
    assertThat(Files.readString(file)).isEqualTo(with);
    assertThat(said(again)).contains("Noted again: remark: Odd.");
  }

  @Test
  void takesNothingBackFromAFileThatWasChangedSince() throws IOException {
    HttpResponse<String> noted =
        site.post("/trial/note", "file", DryingTrial.FILE, "kind", "remark", "words", "Odd.");
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "remark", "words", "Odder.");
    String now = Files.readString(file);

    assertThat(said(undo(noted))).contains("the file was changed since; nothing was undone");
    assertThat(Files.readString(file)).isEqualTo(now);
  }

  /** From 6 h on it is 45 g lighter than the hours before allow. */
  @Test
  void aWeighingThatIsAskedAboutIsConfirmedByAButton() throws IOException {
    String[] weighings = {"+2h", "742", "+4h", "735", "+6h", "729", "+10h", "670", "+12h", "664"};
    StringBuilder text = new StringBuilder(Files.readString(file).stripTrailing());
    text.setLength(text.length() - 1);
    text.append(", \"weighings\": [");
    for (int i = 0; i < weighings.length; i += 2) {
      text.append(i == 0 ? "" : ", ")
          .append("{\"at\": \"" + weighings[i] + "\", \"mass_g\": " + weighings[i + 1] + "}");
    }
    Files.writeString(file, text + "]}");
    String page = "/trial/forecast?file=" + DryingTrial.FILE;

    assertThat(site.get(page).body())
        .contains("The weighing of Sun 19 Apr, 20:00 is right</button>");
    assertThat(site.get(page, "HX-Request", "true").body())
        .contains("name=\"file\" value=\"" + DryingTrial.FILE + "\"");
    assertThat(site.get(page + "&part=rest", "HX-Request", "true").body())
        .contains("looks wrong, left out");
    HttpResponse<String> answer =
        site.post("/trial/note", "file", DryingTrial.FILE, "kind", "confirmed", "at", "10h");

    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(Files.readString(file)).contains("670, \"confirmed\": true");
    assertThat(site.get(page).body()).doesNotContain("Sun 19 Apr, 20:00 is right");
  }

  @Test
  void saysThatATrialIsPutAwayAndFetchesItBack() throws IOException {
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "put-away");

    assertThat(site.get("/trial?file=" + DryingTrial.FILE).body())
        .contains("put away: left out of lists")
        .contains("value=\"fetch-back\"");
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "fetch-back");
    assertThat(site.get("/trial?file=" + DryingTrial.FILE).body())
        .doesNotContain("put away: left out");
  }

  @Test
  void takesBackPhotosThatWereSentTogether() throws IOException {
    String before = Files.readString(file);
    HttpResponse<String> kept = site.postPhoto(DryingTrial.FILE, "a.png", PageClient.PIXEL);

    undo(kept);
    assertThat(Files.readString(file)).isEqualTo(before);
    assertThat(site.folder().resolve("drying-photo-1.png")).as("nothing is lost").exists();
  }

  @Test
  void keepsTheTimeOfThePourWhereOnlyTheEmptyPlateIsNoted() throws IOException {
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "poured", "at", "", "tare", "601");

    assertThat(Files.readString(file))
        .contains("\"poured_at\": \"2026-04-19T10:00\"", "\"tare_g\": 601");
  }

  private String said(HttpResponse<String> answer) {
    return site.get(answer.headers().firstValue("Location").orElseThrow().replaceFirst("#.*", ""))
        .body();
  }

  private HttpResponse<String> undo(HttpResponse<String> noted) {
    return site.post("/trial/undo", "said", PageClient.hidden(said(noted), "said"));
  }

  /** A plate that waits and is wanted by no date has nothing to be told in words. */
  @Test
  void aPlateThatWaitsHasNoEmptySentence() throws IOException {
    Files.writeString(file, Files.readString(file).replace("2026-04-19T10:00", "2026-04-20T11:00"));
    for (String address : List.of("/trial/forecast?file=" + DryingTrial.FILE, "/plates/all")) {
      Document page = Jsoup.parse(site.getMade(address).body());
      assertThat(page.text()).as(address).contains("of its water is left");
      assertThat(page.select("p.sentence")).as(address).isEmpty();
    }
  }

  @Test
  void writesOnceHoweverOftenTheButtonIsPressed() throws IOException {
    String page = site.get("/trial?file=" + DryingTrial.FILE).body();
    String form = RunningSite.hidden(page, "form");

    List<CompletableFuture<HttpResponse<String>>> presses =
        IntStream.range(0, 4)
            .mapToObj(
                i ->
                    CompletableFuture.supplyAsync(
                        () ->
                            site.post(
                                "/trial/note",
                                "file",
                                DryingTrial.FILE,
                                "kind",
                                "weighed",
                                "mass",
                                "690.5",
                                "form",
                                form)))
            .toList();

    assertThat(presses).allMatch(press -> press.join().statusCode() == 303);
    assertThat(Files.readString(file).split("690.5", -1)).hasSize(2);
  }

  @Test
  void writesAChangedFormAgain() throws IOException {
    String form = RunningSite.hidden(site.get("/trial?file=" + DryingTrial.FILE).body(), "form");

    for (String mass : List.of("690.5", "680.5")) {
      site.post(
          "/trial/note",
          "file",
          DryingTrial.FILE,
          "kind",
          "weighed",
          "mass",
          mass,
          "at",
          mass.equals("690.5") ? "2026-04-20T10:00" : "2026-04-20T11:00",
          "form",
          form);
    }

    assertThat(Files.readString(file)).contains("690.5").contains("680.5");
  }

  @Test
  void keepsAPhotoBesideTheTrialAndShowsIt() throws IOException {
    HttpResponse<String> answer =
        site.postPhoto(DryingTrial.FILE, "../../evil.sh", PageClient.PIXEL);

    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(site.folder().resolve("drying-photo-1.png")).exists();
    assertThat(Files.readString(file)).contains("\"photos\": [").contains("drying-photo-1.png");
    HttpResponse<String> photo = site.get("/photo?file=" + DryingTrial.FILE + "&n=0");
    assertThat(photo.headers().firstValue("Content-Type")).hasValue("image/png");
    assertThat(site.get("/photo?file=" + DryingTrial.FILE + "&n=1").statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @CsvSource({
    "formulations/starter-soft-wrap.json,.kitchen,.happened",
    "formulations/garden/4-blend.json,.happened,.none"
  })
  void showsThePlannedRecipeOrTheOutcomeBesideTheCurveAndNotAgain(
      Path trial, String beside, String absent) throws IOException {
    Files.copy(trial, site.folder().resolve("trial.json"));

    Document page = Jsoup.parse(site.get("/trial/forecast?file=trial.json").body());

    assertThat(page.select(".plate-now > .do " + beside)).hasSize(1);
    assertThat(page.select(beside)).hasSize(1);
    assertThat(page.select(".kitchen")).hasSize(1);
    assertThat(page.select(absent)).isEmpty();
  }

  @Test
  void confirmsTheWeighingOfThePlateThatIsAskedAbout() throws IOException {
    Files.writeString(
        site.folder().resolve("several.json"),
        """
        {"name": "Several", "poured_at": "2026-04-19T10:00",
         "recipe": {"starch": {"kind": "potato", "mass_g": 20.0},
                    "glycerol": {"mass_g": 6, "purity_pct": 99}, "water": {"mass_g": 435}},
         "pour": {"plate": {"material": "glass", "length_mm": 300, "width_mm": 200,
                            "tare_g": 600}, "plates": 3, "poured_g": 150},
         "room": {"name": "kitchen", "air_C": 21, "rh_pct": 50},
         "weighings": [{"at": "+4h", "mass_g": 746, "plate": 2},
                       {"at": "+10h", "mass_g": 700, "plate": 2},
                       {"at": "+20h", "mass_g": 650, "plate": 2},
                       {"at": "+4h", "mass_g": 726}]}
        """);
    Document page = Jsoup.parse(site.get("/trial/forecast?file=several.json").body());

    assertThat(page.select("form:has(button[value=confirmed]) input[name=plate]").eachAttr("value"))
        .contains("2");
    site.post("/trial/note", "file", "several.json", "kind", "confirmed", "at", "4h", "plate", "2");
    assertThat(Files.readString(site.folder().resolve("several.json")))
        .contains("\"mass_g\": 746, \"plate\": 2, \"confirmed\": true");
  }

  @Test
  void saysSoWhenTheFolderIsGone() throws IOException {
    try (RunningSite other =
        RunningSite.over(Files.createDirectory(site.folder().resolve("other")))) {
      Path moved = DryingTrial.in(other.folder());
      assertThat(other.get("/trial?file=" + DryingTrial.FILE).statusCode()).isEqualTo(200);
      String token = other.token();
      Files.delete(moved);
      assertThat(other.get("/trial?file=" + DryingTrial.FILE).body())
          .contains("There is no trial file of this name in this folder any more");
      Files.delete(other.folder());

      for (String path :
          List.of("/", "/trials", "/plates", "/compare", "/learnt", "/trial?file=a.json")) {
        HttpResponse<String> answer = other.get(path);
        assertThat(answer.statusCode()).as(path).isEqualTo(503);
        assertThat(answer.body()).contains("The folder of the trials no longer exists");
      }
      assertThat(
              other
                  .postBare("/trial/note", List.of(), "token", token, "file", DryingTrial.FILE)
                  .statusCode())
          .isEqualTo(503);
    }
  }

  @Test
  void aTrialWithAWrongWeighingStaysATrialAndIsMendedOnItsPage() throws IOException {
    Path file = DryingTrial.in(site.folder());
    Files.writeString(
        file,
        Files.readString(file)
            .replaceFirst(
                "\"room\"",
                "\"weighings\": [{\"at\": \"+6h\", \"mass_g\": 720},"
                    + " {\"at\": \"+9h\", \"mass_g\": -4}], \"room\""));

    String list = site.get("/trials").body();
    assertThat(list).contains("One file has a wrong entry").contains("file=" + DryingTrial.FILE);
    assertThat(Jsoup.parse(list).select(".trials .name a").eachAttr("href"))
        .contains("/trial?file=" + DryingTrial.FILE);
    Document page = Jsoup.parse(site.getMade("/trial?file=" + DryingTrial.FILE).body());
    assertThat(page.select(".left-out .refusal").text()).contains("-4").contains("allowed");
    assertThat(page.select(".noted-lines button[value=drop]")).isNotEmpty();
  }

  @Test
  void showsAFileThatCannotBeReadWithItsFaults() throws IOException {
    Files.writeString(site.folder().resolve("broken.json"), "{\"name\": \"<b>x\", \"recipe\": 7}");

    HttpResponse<String> answer = site.get("/trial?file=broken.json");

    assertThat(answer.body()).contains("This file cannot be read").contains("recipe");
    assertThat(site.get("/trials").body())
        .contains("One file has a wrong entry")
        .contains("broken.json");
  }

  @Test
  void givesTheForecastAloneToAScript() {
    HttpResponse<String> part =
        site.get("/trial/forecast?file=" + DryingTrial.FILE, "HX-Request", "true");

    assertThat(part.body()).contains("Drying curve").doesNotContain("<html");
    assertThat(Jsoup.parse(part.body()).select(".key li").eachText())
        .as("what lines and marks mean")
        .contains("thick spot", "peelable", "dry through");
    assertThat(site.get("/trial/forecast?file=" + DryingTrial.FILE).body())
        .contains("Drying curve")
        .contains("<html");
  }
}
