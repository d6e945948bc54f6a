package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.files.notebook.FileWord;
import starchfilm.material.recipe.GlycerolOrigin;
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
        "/jar?amount=500&reading=density&density=1.20+g/ml&at=20&origin=" + FileWord.of(origin));
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void planAndItsSheets(GlycerolOrigin origin) {
    String wishes =
        "?glycerol=250&purity=82&starch=potato&vinegar=5&plates=2&length=300&width=200"
            + "&material=glass&pot=2&scale=1&feel=flexible&air=20&rh=50&origin="
            + FileWord.of(origin);
    warns(origin, "/plan/wishes" + wishes);
    warns(origin, "/plan/sheets" + wishes);
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void recipeThatIsMovedAndKept(GlycerolOrigin origin) throws IOException {
    String moved = "base=starter+first-film&was=starter+first-film&wet=3&plasticiser=30&origin=";
    warns(origin, "/plan?" + moved + FileWord.of(origin));

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
        FileWord.of(origin));
    assertThat(Files.readString(site.folder().resolve("moved.json")))
        .containsPattern("\"origin\" ?: ?\"" + FileWord.of(origin) + "\"");
    warns(origin, "/trial?file=moved.json");
  }

  @ParameterizedTest
  @EnumSource(GlycerolOrigin.class)
  void trialThatIsStarted(GlycerolOrigin origin) {
    site.post(
        "/trial/start", "starter", "soft-wrap", "name", "begun", "origin", FileWord.of(origin));

    warns(origin, "/trial?file=begun.json");
  }

  @Test
  void startersAreBoughtUnlessSomebodySaysOtherwise() {
    site.post("/trial/start", "starter", "soft-wrap", "name", "begun");

    warns(GlycerolOrigin.BOUGHT, "/trial?file=begun.json");
  }

  @Test
  void everyPageHasTheWholeListInItsFoot() {
    String foot = Jsoup.parse(site.get("/trials").body()).select("footer .safety").text();

    assertThat(foot)
        .contains(Caution.RECOVERED_GLYCEROL.sentence(), Caution.MOULD.sentence())
        .contains(Caution.LYE_AND_ACID.sentence(), Caution.RULES.sentence());
  }

  /** In the page itself, not in the list that stands at every page's foot. */
  private void warns(GlycerolOrigin origin, String path) {
    String said = Jsoup.parse(site.getMade(path).body()).select("main").text();

    assertThat(said.contains(Caution.RECOVERED_GLYCEROL.sentence()))
        .isEqualTo(origin == GlycerolOrigin.RECOVERED);
    assertThat(said.contains(Caution.HEATING_RECOVERED.sentence()))
        .isEqualTo(origin == GlycerolOrigin.RECOVERED);
    assertThat(said.contains(Caution.GLYCEROL_OF_UNKNOWN_ORIGIN.sentence()))
        .isEqualTo(origin == GlycerolOrigin.UNKNOWN);
  }
}
