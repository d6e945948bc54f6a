package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.web.Served.Content;

/** Learning at the press of a button. */
class LearnPageTest {
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.GARDEN) RunningSite served) throws IOException {
    site = served;
    Files.deleteIfExists(site.folder().resolve("workshop.json"));
  }

  /** What comes of the button once the learning has ended. */
  private HttpResponse<String> learnt() {
    HttpResponse<String> answer = site.post("/learn");
    while (answer.statusCode() == 200) {
      answer = site.get("/learnt/working");
    }
    return answer;
  }

  /**
   * The headline of a plate in the workroom that has no weighing of its own: a plate's own
   * weighings leave little to what others teach.
   */
  private String unweighedPlate() throws IOException {
    ObjectMapper json = new ObjectMapper();
    JsonNode plate = json.readTree(site.folder().resolve("3-much-glycerol.json").toFile());
    ((ObjectNode) plate).remove("weighings");
    json.writeValue(site.folder().resolve("unweighed.json").toFile(), plate);
    String page = site.get("/trial/forecast?file=unweighed.json").body();
    return page.replaceAll("(?s).*>(The forecast: [^<]+)<.*", "$1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/today",
        "/jar",
        "/plan",
        "/plan/thickness",
        "/plates",
        "/trials",
        "/trial?file=4-blend.json",
        "/learnt"
      })
  void everyPageSaysThatWhatWasLearntCannotBeRead(String page) throws IOException {
    Files.writeString(site.folder().resolve("workshop.json"), "{");

    assertThat(Jsoup.parse(site.get(page).body()).select(".refusal").eachText())
        .singleElement()
        .asString()
        .startsWith("workshop.json, line 1: ")
        .endsWith("until then the forecasts are the textbook's.");
  }

  @Test
  void theButtonTeachesAndForecastsChangeAtOnce() throws IOException {
    assertThat(site.get("/learnt").body()).contains("Nothing yet");
    String textbook = unweighedPlate();

    HttpResponse<String> pressed = learnt();

    assertThat(pressed.statusCode()).isEqualTo(303);
    String page = site.get(pressed.headers().firstValue("Location").orElse("")).body();
    assertThat(page)
        .contains("Learnt; every forecast from now on uses it.")
        .contains("Your room &quot;workroom&quot; dries")
        .contains("Readings that look wrong, given little weight");
    Document shown = Jsoup.parse(page);
    assertThat(shown.select(".learning > .headline")).hasSize(3);
    assertThat(shown.select(".told-row svg[role=img]")).isNotEmpty();
    String doubted = shown.select(".doubted li").text();
    assertThat(doubted)
        .startsWith("Little glycerol, weighing of Mon 23 Mar, 15:30: a film of 11.0 g noted");
    Document trial = Jsoup.parse(site.get(shown.select(".doubted a").attr("href")).body());
    assertThat(trial.select(".noted-lines li details[open] > summary").eachText())
        .containsExactly("plate 1 weighed 609 g, Mon 23 Mar, 15:30");
    assertThat(trial.select("input[autofocus]").attr("value")).isEqualTo("609");
    assertThat(site.folder().resolve("workshop.json")).exists();
    assertThat(unweighedPlate()).isNotEqualTo(textbook);
    assertThat(
            site.get("/compare/choice?trial=4-blend.json&trial=3-much-glycerol.json").statusCode())
        .isEqualTo(200);
  }

  @Test
  void aFileOfAnotherVersionIsKeptAndThatIsSaid() throws IOException {
    Path workshop = site.folder().resolve("workshop.json");
    Files.writeString(workshop, "{\"old\": true}");

    String said = site.get(learnt().headers().firstValue("Location").orElse("")).body();

    assertThat(said).contains("workshop.json that was there is not as this version writes it");
    assertThat(workshop.resolveSibling("workshop.json.before")).hasContent("{\"old\": true}");
  }

  @Test
  void withoutWeighingsItSaysWhatWouldTeach() throws IOException {
    for (String file : new String[] {"1-thick-tray", "2-little-glycerol", "3-much-glycerol"}) {
      Files.delete(site.folder().resolve(file + ".json"));
    }
    for (String file : new String[] {"4-blend", "5-blend-in-the-shed", "6-thin-by-the-fan"}) {
      Files.delete(site.folder().resolve(file + ".json"));
    }
    DryingTrial.in(site.folder());

    HttpResponse<String> pressed = learnt();

    assertThat(pressed.statusCode()).isEqualTo(422);
    assertThat(pressed.body()).contains("There is nothing to learn from yet");
    assertThat(site.folder().resolve("workshop.json")).doesNotExist();
  }

  @Test
  void aWeighingOfAPlateUnderWayMovesItsForecast() throws IOException {
    DryingTrial.in(site.folder());
    String before = site.get("/plates/all").body();
    // Much lighter than the textbook expects after 26 hours.
    site.post("/trial/note", "file", DryingTrial.FILE, "kind", "weighed", "mass", "640");

    String after = site.get("/plates/all").body();

    assertThat(after).isNotEqualTo(before);
    assertThat(site.get("/trial/forecast?file=" + DryingTrial.FILE).body())
        .contains("With 1 weighing of this plate; forecast at the pour:");
  }
}
