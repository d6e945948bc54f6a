package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.units.Named;
import starchfilm.report.caution.Caution;

/** The pages ask where the glycerol comes from, and warn by the answer. */
class CautionsOnEveryPageTest {
  private RunningSite site;

  @BeforeEach
  void start(@Served RunningSite served) {
    site = served;
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void jar(GlycerolOrigin origin) {
    warns(
        origin,
        "/jar?amount=500&reading=density&density=1.20+g/ml&at=20&origin=" + Named.of(origin));
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void planAndItsSheets(GlycerolOrigin origin) {
    String wishes =
        "?glycerol=250&purity=82&starch=potato&vinegar=5&plates=2&length=300&width=200"
            + "&material=glass&pot=2&scale=1&feel=flexible&air=20&rh=50&origin="
            + Named.of(origin);
    warns(origin, "/plan/wishes" + wishes);
    warns(origin, "/plan/sheets" + wishes);
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void recipeThatIsMovedAndKept(GlycerolOrigin origin) throws IOException {
    String moved = "base=starter+first-film&was=starter+first-film&wet=3&plasticiser=30&origin=";
    warns(origin, "/plan?" + moved + Named.of(origin));

    site.post(
        "/plan/keep",
        "base",
        "starter first-film",
        "was",
        "starter first-film",
        "wet",
        "3",
        "plasticiser",
        "30",
        "name",
        "moved",
        "origin",
        Named.of(origin));
    assertThat(Files.readString(site.folder().resolve("moved.json")))
        .containsPattern("\"origin\" ?: ?\"" + Named.of(origin) + "\"");
    warns(origin, "/trial?file=moved.json");
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void trialThatIsStarted(GlycerolOrigin origin) {
    site.post("/trial/start", "starter", "soft-wrap", "name", "begun", "origin", Named.of(origin));

    warns(origin, "/trial?file=begun.json");
    warns(origin, "/compare/page?trial=begun.json");
  }

  @Test
  void startersAreBoughtUnlessSomebodySaysOtherwise() {
    site.post("/trial/start", "starter", "soft-wrap", "name", "begun");

    warns(GlycerolOrigin.BOUGHT, "/trial?file=begun.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/trials", "/learnt", "/compare"})
  void everyPageLeadsToTheWholeListAndDoesNotRepeatIt(String path) {
    Document page = Jsoup.parse(site.get(path).body());
    assertThat(page.select("footer .safety")).isEmpty();

    String all = Jsoup.parse(site.get(page.select("footer .care a").attr("href")).body()).text();

    assertThat(all)
        .contains(Caution.RECOVERED_GLYCEROL.sentence(), Caution.MOULD.sentence())
        .contains(Caution.LYE_AND_ACID.sentence(), Caution.RULES.sentence());
  }

  @Test
  void trialThatHasEndedNamesItsCautionsAndLeadsToThem() throws IOException {
    site.post("/trial/start", "starter", "soft-wrap", "name", "begun", "origin", "recovered");
    Path file = site.folder().resolve("begun.json");
    Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{\"rating\": 3,"));

    Element care =
        Jsoup.parse(site.getMade("/trial?file=begun.json").body()).select("main p.safety").first();

    assertThat(care.text()).startsWith("Take care: Recovered glycerol");
    assertThat(care.text()).doesNotContain(Caution.RECOVERED_GLYCEROL.text());
    assertThat(care.select("a").attr("href")).isEqualTo("/care");
  }

  /** In the page itself, neither folded nor behind the link at its foot. */
  private void warns(GlycerolOrigin origin, String path) {
    Element main = Jsoup.parse(site.getMade(path).body()).selectFirst("main");
    main.select("details:not([open])").remove();
    String said = main.text();

    assertThat(said.contains(Caution.RECOVERED_GLYCEROL.sentence()))
        .isEqualTo(origin == GlycerolOrigin.RECOVERED);
    assertThat(said.contains(Caution.HEATING_RECOVERED.sentence()))
        .isEqualTo(origin == GlycerolOrigin.RECOVERED);
    assertThat(said.contains(Caution.GLYCEROL_OF_UNKNOWN_ORIGIN.sentence()))
        .isEqualTo(origin == GlycerolOrigin.UNKNOWN);
  }
}
