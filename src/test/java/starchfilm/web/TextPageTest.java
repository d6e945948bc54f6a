package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.web.Served.Content;

class TextPageTest {
  private Path file;
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.DRYING) RunningSite served) {
    site = served;
    file = site.folder().resolve(DryingTrial.FILE);
  }

  @Test
  void ofTwoWhoEditAtOnceTheSecondSeesBothTexts() throws IOException {
    String version = version();
    String first = Files.readString(file).replace("On the shelf", "The first");
    String second = Files.readString(file).replace("On the shelf", "The second");

    assertThat(save(first, version).statusCode()).isEqualTo(303);
    HttpResponse<String> answer = save(second, version);

    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body())
        .contains("Somebody else changed this file meanwhile")
        .contains("The second")
        .contains("The first");
    assertThat(Files.readString(file)).isEqualTo(first);
    assertThat(save(second, RunningSite.hidden(answer.body(), "version")).statusCode())
        .isEqualTo(303);
    assertThat(Files.readString(file)).isEqualTo(second);
  }

  @Test
  void aNoteMadeMeanwhileIsNotOverwritten() throws IOException {
    String version = version();
    String edited = Files.readString(file).replace("On the shelf", "Edited");
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "weighed", "mass", "690.5");

    assertThat(save(edited, version).statusCode()).isEqualTo(409);
    assertThat(Files.readString(file)).contains("690.5");
  }

  @Test
  void keepsAFaultyTextInTheFormAndOutOfTheFile() throws IOException {
    String before = Files.readString(file);

    HttpResponse<String> answer =
        save(before.replace("\"mass_g\": 4.2", "\"mass_g\": -4"), version());

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("recipe.glycerol.mass_g: -4 given").contains("line 6");
    assertThat(answer.body()).contains("&quot;mass_g&quot;: -4");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-film", "soft-wrap", "stiff-window"})
  void startsATrialFromEachStarter(String starter) throws IOException {
    HttpResponse<String> answer =
        site.post("/trial/start", "starter", starter, "name", "../../Ein Film: grün!");

    assertThat(answer.headers().firstValue("Location").orElse(""))
        .startsWith("/trial?file=ein-film-grun.json");
    assertThat(Files.readString(site.folder().resolve("ein-film-grun.json")))
        .contains("../../Ein Film: grün!")
        .doesNotContain("invented");
  }

  @Test
  void startsATrialLikeAnotherWithoutItsHistory() throws IOException {
    Files.copy(Path.of("formulations/garden/4-blend.json"), site.folder().resolve("4-blend.json"));

    for (int i = 0; i < 2; i++) {
      site.post("/trial/again", "file", "4-blend.json", "name", "Once more");
    }

    assertThat(Files.readString(site.folder().resolve("once-more.json")))
        .contains("12.0")
        .doesNotContain("weighings")
        .doesNotContain("rating")
        .doesNotContain("poured_at");
    assertThat(site.folder().resolve("once-more-2.json")).exists();
    assertThat(site.get("/trial?file=once-more.json").body()).contains("planned");
  }

  @Test
  void poursATrialAgainWithOneThingChanged() throws IOException {
    Files.copy(Path.of("formulations/garden/4-blend.json"), site.folder().resolve("4-blend.json"));

    String page =
        followed(
            site.post("/trial/again", "file", "4-blend.json", "name", "Thin", "but", "thinner"));

    assertThat(page).contains("Changed: wet thickness 2.46 → 1.7 mm.");
    assertThat(Files.readString(site.folder().resolve("thin.json")))
        .contains("\"from\" : \"4-blend.json\"", "\"wet_thickness_mm\" : 1.7");
  }

  @Test
  void printsSheetAndLabelsOfATrial() throws IOException {
    Files.copy(Path.of("formulations/garden/4-blend.json"), site.folder().resolve("4-blend.json"));

    assertThat(site.get("/trial/sheet?file=4-blend.json").body()).contains("Weigh out", "330 g");
    assertThat(site.get("/trial/labels?file=4-blend.json").body()).contains("Not food.");
    assertThat(site.get("/trial/sheet?file=gone.json").statusCode()).isEqualTo(404);
  }

  @Test
  void startsATrialFromWhatWasCooked() throws IOException {
    String page =
        followed(
            site.post(
                "/trial/cooked",
                "cooked",
                "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass, 3 mm; kitchen 20C,55%",
                "name",
                "Typed"));

    assertThat(page)
        .contains("Saved as a new trial.", "temperature of the paste when poured as 60 °C")
        .doesNotContain("“”");
    assertThat(Files.readString(site.folder().resolve("typed.json"))).contains("\"kitchen\"");
  }

  @Test
  void keepsALineThatIsNotUnderstoodOnThePage() {
    HttpResponse<String> answer =
        site.post("/trial/cooked", "cooked", "20 g potato; <b>hello</b>", "name", "");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains(
            "&lt;b&gt;hello&lt;/b&gt;",
            "not understood; understood so far: ",
            "20 g potato; &lt;b&gt;");
  }

  @Test
  void letsABrokenFileBeMended() throws IOException {
    Files.writeString(file, "{\"name\": ");

    assertThat(site.get("/trial?file=" + DryingTrial.FILE).body()).contains("Fix the file");
    assertThat(site.get("/trial/text?file=" + DryingTrial.FILE).body()).contains("<textarea");
  }

  private String followed(HttpResponse<String> answer) {
    return site.get(answer.headers().firstValue("Location").orElseThrow()).body();
  }

  private String version() {
    return RunningSite.hidden(site.get("/trial/text?file=" + DryingTrial.FILE).body(), "version");
  }

  private HttpResponse<String> save(String text, String version) {
    return site.post("/trial/text", "file", DryingTrial.FILE, "text", text, "version", version);
  }
}
