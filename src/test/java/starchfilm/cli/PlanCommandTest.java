package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;

class PlanCommandTest {
  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  private static final String[] SERIES = {
    "plan",
    "--glycerol",
    "250g",
    "--purity",
    "99%",
    "--origin",
    "bought",
    "--starch",
    "potato",
    "--room",
    "20C,50%",
    "--scale",
    "0.1g"
  };

  private int series(String... more) {
    return terminal.run(Stream.concat(Stream.of(SERIES), Stream.of(more)).toArray(String[]::new));
  }

  @Test
  void plansASeriesWithFilesSheetsAndAPrintedSeed() throws IOException {
    int code =
        series(
            "--plates",
            "6x300x200mm glass",
            "--vary",
            "glycerol",
            "15,25,35",
            "--groups",
            "Red,Green,Blue",
            "--seed",
            "7",
            "--save",
            "class",
            "--sheet",
            "sheets.html");

    assertThat(code).as(terminal.err()).isZero();
    assertThat(terminal.out())
        .contains("3 groups of 2 plates each", "(seed 7): Red, Blue, Green.", "the trend shows in");
    assertThat(Files.readString(folder.resolve("class/green-glycerol-25.json")))
        .contains("Green: glycerol 25", "Its pot is number 3 to be cooked");
    assertThat(Files.readString(folder.resolve("sheets.html"))).contains("Red: glycerol 15");
    assertThat(terminal.run("check", "class")).isZero();
  }

  /** On a balance of 1 g a small plate's film is another than the one wished for. */
  @Test
  void saysOnceHowManyFilmsFeelAsWished() {
    terminal.run(
        "plan --glycerol 250g --starch potato --plate 30x20cm --room 21C,50% --feel stretchy"
            .split(" "));

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("; the middle one is stretchy, as wished.")
        .contains("; the middle one is flexible rather than stretchy.")
        .doesNotContain("as asked");
  }

  @Test
  void plansBackwardsFromPieces() {
    int code = series("--plates", "2x300x200mm glass", "--pieces", "40 of 60x90 mm");

    assertThat(code).as(terminal.err()).isZero();
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains(
            "40 pieces of 60 × 90 mm, 9 from a plate, take 5 plates",
            "3 pours of 2 plates",
            "Left in the jar afterwards:")
        .doesNotContain("used oil");
  }

  /** By hand: 188 mg KOH/g, 3 mol a mol of fat, 92.09 g/mol: 103 g of glycerol in a kg of oil. */
  @Test
  void tellsHowMuchOilHeldRecoveredGlycerolAndNoDoses() {
    int code =
        terminal.run(
            "plan",
            "--glycerol",
            "60g",
            "--purity",
            "82%",
            "--origin",
            "recovered",
            "--starch",
            "potato",
            "--plates",
            "2x300x200mm glass",
            "--room",
            "20C,50%",
            "--pieces",
            "400 of 60x90 mm");

    assertThat(code).as(terminal.err()).isZero();
    Matcher grams =
        Pattern.compile("([0-9]+) g of glycerol out.* bound in about ([0-9]+) g of used oil")
            .matcher(terminal.out().replaceAll("\\s+", " "));
    assertThat(grams.find()).isTrue();
    double perKg = 0.82 * Double.parseDouble(grams.group(1)) / Double.parseDouble(grams.group(2));
    assertThat(perKg).isCloseTo(0.103, within(0.004));
    assertThat(terminal.out()).contains("To buy:").doesNotContain("NaOH", "KOH of");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--pieces many                       | allowed pieces such as 40 of 60x90 mm",
        "--pieces 0of60x90mm                 | 0 pieces given, allowed 1 to 100000",
        "--pieces 5of1x90mm                  | allowed sides of 2 mm or more",
        "--pieces 5of400x90mm                | allowed pieces that fit 10 mm inside",
        "--pieces 5of40x90mm --vary cook 5,9 | given beside --vary",
        "--vary glycerol 15                  | 1 value given, allowed 2 to 12",
        "--vary glycerol 15,15               | the same value twice",
        "--vary vinegar 10,1000              | vinegar in a pot: 1000 g given, allowed at most the",
        "--vary glycerol 15,250              | 250 g per 100 g dry starch given, allowed 0 to 60",
        "--vary sugar 15,25                  | \"sugar\" given, allowed glycerol, thickness",
        "--vary glycerol 15,x                | \"x\" given, allowed numbers with commas",
        "--vary thickness 1,2,3,4,5,6,7      | 6 plates given for 7 groups, allowed 7 or more",
        "--vary cook 5,10 --groups Red       | 1 name for 2 groups",
        "--vary cook 5,10 --replicates 4     | 6 plates given for 2 groups of 4 plates, allowed 8",
        "--vary cook 5,10 --seed dice        | --seed: \"dice\" given, allowed a whole number",
        "--seed 7                            | --seed: given without --vary"
      })
  void refusesASeriesThatCannotBe(String options, String why) {
    List<String> words = new ArrayList<>(List.of("--plates", "6x300x200mm glass"));
    words.addAll(List.of(options.split(" +")));

    assertThat(series(words.toArray(String[]::new))).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains(why).doesNotContain("the program itself");
  }

  @Test
  void tellsRecipesThatCanBeWeighedOut() {
    assertThat(plan("--by", "5d")).isZero();

    assertThat(terminal.out())
        .containsPattern(
            "\\ASafest and closest to the wish:\n"
                + "Pour \\d+ g on each level plate, [0-9.]+ mm wet; poured")
        .contains("Asked for: flexible film from 250 g of glycerol (205 g pure)")
        .contains("1. Safest", "Most film", "eady soonest", "potato starch", "that boils off")
        .contains("Weigh the empty pot", "it thickens between 59 and 68 °C")
        .contains("dry through, thick spot", "Ready by your date, 5.0 days after the pour, in ")
        .contains("! Recovered glycerol may still hold methanol")
        .doesNotContain("NaN", "Infinity", "never (", "Optional");
    assertThat(terminal.out().lines()).allMatch(line -> line.length() <= 93);
    assertThat(terminal.err()).isEmpty();
  }

  @Test
  void savesTrialFilesThatTheNotebookReadsAndNeverWritesOver() throws IOException {
    assertThat(plan("--by", "5d", "--save", "trials")).isZero();
    List<Path> first = files();
    List<String> before = contents(first);
    assertThat(plan("--by", "5d", "--save", "trials")).isZero();

    Notebook notebook = NotebookReader.read(List.of(folder.resolve("trials")));
    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.notices()).isEmpty();
    assertThat(notebook.trials()).hasSize(2 * first.size());
    assertThat(contents(first)).isEqualTo(before);
    for (Trial trial : notebook.trials()) {
      assertThat(trial.casting().pour().plates()).isEqualTo(4);
      assertThat(trial.hasHistory()).isFalse();
      assertThat(trial.recipe().glycerol().stock().saltFraction().value())
          .isCloseTo(0.03, within(1e-9));
      assertThat(trial.notRecorded()).extracting("field").doesNotContain("pour.wet_thickness_mm");
    }
  }

  @Test
  void aPlanForUseInFrostIsSavedAsFilesThatAreReadAgain() {
    assertThat(plan("--by", "5d", "--feel", "stiff", "--use", "50%, -10C", "--save", "trials"))
        .isZero();

    Notebook notebook = NotebookReader.read(List.of(folder.resolve("trials")));
    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.trials())
        .isNotEmpty()
        .allSatisfy(
            trial ->
                assertThat(trial.casting().use().temperatureK()).isCloseTo(263.15, within(1e-9)));
  }

  @Test
  void aSavedPlanIsForecastAsThePlanSaid() {
    assertThat(plan("--by", "5d", "--save", "trials")).isZero();
    String planned = lineWith("dry through, thick spot", terminal.out());
    Trial safest =
        NotebookReader.read(List.of(folder.resolve("trials"))).trials().stream()
            .filter(trial -> trial.name().startsWith("Safest"))
            .findFirst()
            .orElseThrow();

    Terminal again = new Terminal(folder);
    assertThat(again.run("dry", safest.file().toString())).isZero();

    String median = planned.replaceAll(".*spot +([0-9.]+ \\w+).*", "$1");
    assertThat(again.out()).contains(median.split(" ", -1)[0]);
  }

  @Test
  void writesSheetsOnePageARecipe() throws IOException {
    assertThat(plan("--by", "5d", "--sheet", "sheets.html")).isZero();

    String page = Files.readString(folder.resolve("sheets.html"));
    long recipes = terminal.out().lines().filter(line -> line.matches("[1-4]\\. .*")).count();
    assertThat(page.split("<article", -1).length - 1).isEqualTo((int) recipes);
    assertThat(page)
        .startsWith("<!DOCTYPE html>")
        .contains(
            "Take care.",
            "Recovered glycerol</b> <span>may still hold methanol",
            "empty pot",
            "tick")
        .doesNotContain(" th:", "NaN", "null");
  }

  @Test
  void theSameRequestGivesTheSameBytes() {
    plan("--by", "5d", "--sheet", "-");
    Terminal again = new Terminal(folder);
    again.run(words("--by", "5d", "--sheet", "-"));

    assertThat(again.out()).isEqualTo(terminal.out()).startsWith("<!DOCTYPE html>");
  }

  @Test
  void aLogIsCopiedBesideTheTrialsItBelongsTo() throws IOException {
    Path log = Path.of("formulations", "garden", "shed-april.csv").toAbsolutePath();
    int exitCode =
        terminal.run(
            "plan",
            "--glycerol",
            "120g",
            "--purity",
            "99%",
            "--starch",
            "corn",
            "--plates",
            "2x300x200mm glass",
            "--room",
            log.toString(),
            "--save",
            "trials");

    assertThat(terminal.err()).isEmpty();
    assertThat(exitCode).isZero();
    Notebook notebook = NotebookReader.read(List.of(folder.resolve("trials")));
    assertThat(notebook.faults()).isEmpty();
    assertThat(folder.resolve("trials/shed-april.csv")).hasSameBinaryContentAs(log);
  }

  @ParameterizedTest
  @ValueSource(strings = {"19C,55%", "oven ajar"})
  void whereNothingFitsItSaysWhatWouldHelp(String room) {
    int exitCode =
        terminal.run(
            "plan",
            "--glycerol",
            "none",
            "--starch",
            "potato",
            "--plates",
            "4x300x200mm glass",
            "--room",
            room,
            "--by",
            "5d");

    assertThat(exitCode).isEqualTo(1);
    assertThat(terminal.out())
        .contains("No recipe meets every wish. What would help:")
        .contains("Get glycerol with a label, ");
    assertThat(terminal.err())
        .isEqualToNormalizingNewlines("starchfilm: no recipe meets every wish.\n");
  }

  private int plan(String... more) {
    return terminal.run(words(more));
  }

  /** A plan that is right, and what else is written. */
  static String[] words(String... more) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "plan",
                "--glycerol",
                "250g",
                "--purity",
                "82%",
                "--salt",
                "3%",
                "--starch",
                "potato",
                "--plates",
                "4x300x200mm glass",
                "--room",
                "19C,55%"));
    words.addAll(List.of(more));
    return words.toArray(String[]::new);
  }

  private List<Path> files() throws IOException {
    try (var files = Files.list(folder.resolve("trials"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static List<String> contents(List<Path> files) throws IOException {
    List<String> contents = new ArrayList<>();
    for (Path file : files) {
      contents.add(Files.readString(file));
    }
    return contents;
  }

  private static String lineWith(String words, String text) {
    return text.lines().filter(line -> line.contains(words)).findFirst().orElseThrow();
  }

  /** The fiftieth film of a hundred, counted from the stiffest, is the one that is named. */
  @Test
  void theFeelThatIsNamedIsTheMiddleOneOfThoseThatAreCounted() {
    terminal.run(
        "plan --glycerol 250g --starch potato --plate 30x20cm --room 21C,50% --by 5d".split(" "));

    Matcher told =
        Pattern.compile("from the stiffest to the softest, about ([^;]+); the middle one is (\\w+)")
            .matcher(terminal.out().replaceAll("\\s+", " "));
    int found = 0;
    while (told.find()) {
      Matcher share = Pattern.compile("(\\d+) (?:are )?(\\w+)").matcher(told.group(1));
      int sum = 0;
      while (sum <= 50 && share.find()) {
        sum += Integer.parseInt(share.group(1));
      }
      assertThat(share.group(2)).isEqualTo(told.group(2));
      found++;
    }
    assertThat(found).isPositive();
  }

  @Test
  void platesMayBeWrittenWithACommaBetweenAndOneMaterialThatCountsIsNamed() {
    assertThat(
            terminal.run(
                "plan",
                "--glycerol",
                "250g",
                "--starch",
                "potato",
                "--plates",
                "2x300x200mm glass, 2x 24cm round steel",
                "--room",
                "21C,50%"))
        .as(terminal.err())
        .isZero();

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("(30 × 20 cm)", "(24 cm round)")
        .contains("counted as glass for all of them, though glass and steel were given.");
  }

  @Test
  void saysHowThickTheFilmMayBe() {
    terminal.plan();
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("film of about 50 to 250 µm when dry");

    terminal = new Terminal(folder);
    terminal.plan("--thickness", "80um");
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("80 µm thick, give or take about a tenth")
        .doesNotContain("50 to 250 µm");
  }
}
