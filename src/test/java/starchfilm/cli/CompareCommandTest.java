package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
  private static final Path STARTER =
      Path.of("formulations", "starter-first-film.json").toAbsolutePath();

  private static final Path GARDEN = Path.of("formulations", "garden").toAbsolutePath();

  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  @Test
  void writesThePageWhereItIsTold() throws IOException {
    assertThat(terminal.run("compare", STARTER.toString(), "--out", "page.html")).isZero();

    assertThat(terminal.out()).isEqualToNormalizingNewlines("1 trial on page.html.\n");
    assertThat(Jsoup.parse(Files.readString(folder.resolve("page.html"))).title())
        .isEqualTo("One trial – starchfilm");
    assertThat(folder.toFile().list()).containsExactly("page.html");
  }

  @Test
  void aDoughThatIsDryFromTheStartIsComparedToo() throws IOException {
    String starter = Files.readString(STARTER);
    String dough = starter.replaceFirst("(\"water\": *\\{ *\"[a-z_]+\": *)[0-9.]+", "$10.5");
    assertThat(dough).isNotEqualTo(starter);
    Files.writeString(folder.resolve("dough.json"), dough);
    assertThat(terminal.run("compare", "dough.json", "--out", "page.html"))
        .as(terminal.err())
        .isZero();
  }

  @Test
  void writesBesideTheReaderWithoutBeingTold() {
    assertThat(terminal.run("compare", STARTER.toString())).isZero();
    assertThat(folder.resolve("starchfilm.html")).exists();
  }

  @Test
  void writesNothingButThePageToStandardOutput() {
    assertThat(terminal.run("compare", STARTER.toString(), "--out", "-")).isZero();
    assertThat(terminal.out()).startsWith("<!DOCTYPE html>");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void sixTrialsAreALightPage() throws IOException {
    assertThat(terminal.run("compare", GARDEN.toString(), "--out", "page.html")).isZero();
    assertThat(Files.size(folder.resolve("page.html"))).isLessThan(300_000);
  }

  /** A shape without a rule of the page's own style sheet is filled with black. */
  @Test
  void everyShapeOfAFigureHasItsLook() throws IOException {
    assertThat(terminal.run("compare", GARDEN.toString(), "--out", "page.html")).isZero();

    Document page = Jsoup.parse(Files.readString(folder.resolve("page.html")));
    String style = page.select("style").html();
    assertThat(page.select("polygon.before")).hasSize(6);
    assertThat(page.select(".before-key").text()).isEqualTo("the same, as forecast at the pour");
    assertThat(page.select("svg [class]:is(polygon, polyline, path, rect, circle, line)"))
        .allSatisfy(
            shape ->
                assertThat(shape.classNames())
                    .anySatisfy(
                        name -> assertThat(style).containsPattern("[.]" + name + "(?![\\w-])")));
  }

  /** Where there is a page; a table alone is for other programs. */
  @Test
  void saysWhatToTryNextAsThePageDoes() throws IOException {
    assertThat(terminal.run("compare", GARDEN.toString(), "--csv", "table.csv")).isZero();
    assertThat(terminal.out()).doesNotContain("What to try next");
    assertThat(terminal.run("compare", GARDEN.toString(), "--out", "page.html")).isZero();

    Element next =
        Jsoup.parse(Files.readString(folder.resolve("page.html")))
            .selectFirst("section.advice[aria-labelledby=next]");
    String said = terminal.out().replaceAll("\\s+", " ");
    assertThat(said)
        .contains("What to try next: " + next.selectFirst(".from a span:last-child").text());
    assertThat(next.select(".try li").eachText())
        .isNotEmpty()
        .allMatch(
            change -> said.toLowerCase(Locale.ROOT).contains(change.toLowerCase(Locale.ROOT)));
  }

  @Test
  void saysOnceWhatIsOddAboutALogThatTwoTrialsShare() throws IOException {
    Path trial = GARDEN.resolve("5-blend-in-the-shed.json");
    Files.copy(GARDEN.resolve("shed-april.csv"), folder.resolve("shed-april.csv"));
    Files.copy(trial, folder.resolve("one.json"));
    Files.writeString(
        folder.resolve("other.json"), Files.readString(trial).replace("in the shed", "again"));

    assertThat(terminal.run("compare", folder.toString(), "--out", "page.html")).isZero();

    assertThat(terminal.err()).containsOnlyOnce("bridged by a straight line");
  }

  @Test
  void letsTheSoundFilesThroughAndNamesTheFaultyOne() throws IOException {
    Files.copy(STARTER, folder.resolve("sound.json"));
    Files.writeString(folder.resolve("faulty.json"), "{\"name\": 3}");

    assertThat(terminal.run("compare", folder.toString(), "--out", "page.html")).isEqualTo(2);

    assertThat(terminal.err())
        .contains("faulty.json, line 1")
        .contains("files with a fault are left out");
    String page = Files.readString(folder.resolve("page.html"));
    assertThat(Jsoup.parse(page).select(".troubles li").text()).contains("faulty.json, line 1");
  }

  @Test
  void neverWritesOverATrialFile() throws IOException {
    Path trial = Files.copy(STARTER, folder.resolve("mine.json"));

    assertThat(terminal.run("compare", trial.toString(), "--out", "mine.json")).isEqualTo(2);

    assertThat(terminal.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: --out mine.json is there and is no comparison page of this program; it was"
                + " left alone, choose another name.\n");
    assertThat(trial).hasSameTextualContentAs(STARTER);
  }

  @Test
  void replacesItsOwnPage() {
    assertThat(terminal.run("compare", STARTER.toString())).isZero();
    assertThat(terminal.run("compare", STARTER.toString())).isZero();
  }

  @Test
  void refusesAFolderThatIsNotThere() {
    assertThat(terminal.run("compare", STARTER.toString(), "--out", "no/page.html")).isEqualTo(2);
    assertThat(terminal.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: --out no/page.html has no folder to go to; make the folder first.\n");
  }

  @Test
  void refusesAFolderAsAPage() {
    assertThat(terminal.run("compare", STARTER.toString(), "--out", ".")).isEqualTo(2);
    assertThat(terminal.err()).startsWith("starchfilm: --out . is a folder; name a file in it.");
  }

  @Test
  void writesNothingWhenNothingIsSound() {
    assertThat(terminal.run("compare", "missing.json")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("missing.json")
        .endsWith(
            String.format("starchfilm: no trial without a fault to compare; nothing written.%n"));
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void saysThatEveryTrialIsPutAway() throws IOException {
    Files.writeString(
        folder.resolve("a.json"),
        Files.readString(STARTER).replaceFirst("\\{", "{\"put_away\": true, "));

    assertThat(terminal.run("compare", ".")).isEqualTo(2);
    assertThat(terminal.err()).contains("no trial that is sound and not put away to compare");
  }

  @Test
  void wantsAFile() {
    assertThat(terminal.run("compare")).isEqualTo(2);
    assertThat(terminal.err()).contains("FILE-OR-FOLDER").contains("starchfilm compare --help");
  }

  @Test
  void aPasteThatIsReadyAsItIsPouredHasAPageToo() throws IOException {
    Files.writeString(
        folder.resolve("hardly-wet.json"),
        """
        {
          "name": "Hardly wet",
          "recipe": {
            "starch": [{"kind": "potato", "mass_g": 200}],
            "glycerol": {"mass_g": 60},
            "water": {"mass_g": 1}
          },
          "cook": {"water_lost_g": 0},
          "pour": {"wet_thickness_mm": 2},
          "room": {"air_C": 20, "rh_pct": 60}
        }
        """);

    assertThat(terminal.run("compare", "hardly-wet.json", "--out", "-")).isZero();
    assertThat(terminal.out()).contains("Hardly wet").doesNotContain("NaN");
  }

  @Test
  void aHalfWrittenTrialLeavesTheOthersAlone() throws IOException {
    Files.copy(STARTER, folder.resolve("good.json"));
    Files.writeString(
        folder.resolve("half.json"),
        "{\"recipe\": {\"starch\": [{\"kind\": \"potato\"}], \"water\": {\"mass_g\": 0}}}");

    assertThat(terminal.run("check", ".")).isEqualTo(2);
    assertThat(terminal.out()).contains("1 trial sound, 1 file with 1 fault.");
    assertThat(terminal.err())
        .endsWith(
            String.format(
                "half.json, line 1, column 23: recipe.starch: neither the grams of"
                    + " starch nor the water to compute them from given, allowed at least one"
                    + " of the two; write the grams of powder weighed as mass_g%n"));
    assertThat(terminal.run("compare", ".", "--out", "page.html")).isEqualTo(2);
    assertThat(terminal.out()).endsWith(String.format("1 trial on page.html.%n"));
    terminal.run("learn", ".");
    assertThat(terminal.err()).doesNotContain("the program itself failed");
  }
}
