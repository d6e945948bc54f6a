package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The assay command as a person types it. */
class AssayCommandTest {
  private static final String RECORD =
      "assay|--mass|125 g|--oil|sunflower|1 l|--alcohol|methanol|220 ml|--catalyst|NaOH|3.5 g";

  private final Terminal terminal = new Terminal(Path.of(""));

  @Test
  void helpShowsExamplesThatRun() {
    assertThat(run("assay|--help")).isZero();
    assertThat(terminal.out().replaceAll(" \\\\\\R +", " "))
        .contains("starchfilm assay --mass \"500 g\" --label \"99.5 %\"")
        .contains("--origin recovered --bottle \"52 g\" \"258 g\" \"303 g\"")
        .contains("Exit codes");

    assertThat(run("assay|--mass|500 g|--label|99.5 %")).isZero();
    assertThat(run("assay|--mass|500 g|--origin|recovered|--bottle|52 g|258 g|303 g|--at|20 C"))
        .isZero();
    assertThat(run(RECORD + "|--acid|HCl|30 ml|10 %|--density|1.20 g/ml|--at|21 C")).isZero();
    assertThat(terminal.err()).isEmpty();
  }

  /** 206 g of water and 251 g of sample: 1.2184 x 998.05 = 1216.1 kg/m3, 82.9 % by the tables. */
  @Test
  void bottleGivesGlycerolWithARange() {
    run("assay|--mass|500 g|--origin|bought|--bottle|52 g|258 g|303 g|--at|20 C");

    assertThat(terminal.out())
        .containsPattern("glycerol +82\\.9 % +\\(81\\.\\d to 84(\\.\\d)?\\)")
        .containsPattern("pure glycerol +41\\d g")
        .contains("Volk and Kaehler 2018");
  }

  /** 98.9 % of 350 g are 346.15 g; of 349.8 g, 345.95 g, which reads 346.0 beside tenths. */
  @ParameterizedTest
  @CsvSource({"350 g,346.1|346.2", "349.8 g,346.0|345.9", "500 g,494.5"})
  void middleAndEndsHaveTheSameDigits(String mass, String middle) {
    run("assay|--label|98.9 %|--mass|" + mass);

    assertThat(terminal.out())
        .containsPattern("pure glycerol +(" + middle + ") g +\\(\\d+\\.\\d to \\d+\\.\\d\\)");
  }

  /** 500 g of 99.5 % are 497.5 g of glycerol, which at 85 % weigh 585 g. */
  @Test
  void boughtJarIsWeighedOutAtAnotherStrength() {
    run("assay|--mass|500 g|--label|99.5 %|--strength|85 %");
    assertThat(oneLine(terminal.out()))
        .contains("Its glycerol weighs 585 g")
        .contains("at 85 %: add water up to that weight.");

    assertThat(run(RECORD + "|--strength|85 %")).isEqualTo(2);
    assertThat(terminal.err()).contains("--strength: given of a jar that was not bought");
  }

  @Test
  void recoveredJarWarnsOfMethanolFirst() {
    run(RECORD + "|--acid|HCl|30 ml|10 %");

    String care = oneLine(terminal.out().substring(terminal.out().indexOf("Take care:")));
    assertThat(care)
        .startsWith("Take care: - Recovered glycerol may still hold methanol")
        .contains("for food, skin, cosmetics or toys")
        .contains("Local rules and a supervising teacher or licensed practice come before");
    assertThat(oneLine(terminal.out())).contains("Methanol left: unknown, from none to ");
  }

  /** Each word of each option is looked at: names, shares, concentrations, pellets, repeats. */
  @Test
  void readsTheWholeRecord() {
    assertThat(
            run(
                "assay|--mass|170 g|--oil|used-frying-oil|1 kg|--acid-value|2.5|--alcohol|Ethanol"
                    + "|300 g|--catalyst|KOH|9 g|--catalyst-purity|90 %|--crude|300 g|--share|90 %"
                    + "|--acid|sulfuric|75 ml|1 mol/l|--lye|sodium hydroxide|0.4 g|solid"
                    + "|--salt-out|10 g|--alcohol-out|60 ml|--added|calcium-chloride|8 g"
                    + "|--added|water|20 ml|--taken-out|calcium chloride|3 g|--fatty-layer-left"))
        .isZero();
    assertThat(oneLine(terminal.out()))
        .contains("may still hold ethanol")
        .contains("Drying salt is left in it")
        .contains("The crude layer held about");
  }

  static Stream<Arguments> wrong() {
    return Stream.of(
        Arguments.of(
            "assay|--label|99 %", "--mass: not given; write what the jar holds, such as 500g"),
        Arguments.of(
            "assay|--mass|500|--label|99 %",
            "--mass: \"500\" given, allowed a mass or a volume, such as 250 g or 200 ml; add the"
                + " unit"),
        Arguments.of(
            "assay|--mass|500 g|--label|0.995 %",
            "glycerol by the label: 0.995 % given, allowed 20 to 100 %; write the per cent of the"
                + " mass, such as 99.5 %"),
        Arguments.of(
            "assay|--mass|500 g|--density|1.2",
            "--at: not given; write the temperature of the jar when it was read, such as 20C"),
        Arguments.of(
            "assay|--mass|500 g|--at|20 C",
            "--at: a temperature alone given; add one of --density, --bottle, --sample, --index"),
        Arguments.of(
            "assay|--mass|500 g|--density|heavy|--at|20 C",
            "--density: \"heavy\" given, allowed a density in g/ml or kg/m3, or a specific gravity"
                + " without unit, such as 1.231 g/ml; write one number with its unit"),
        Arguments.of(
            "assay|--mass|500 g|--density|1.2|--index|1.4|--at|20 C",
            "more than one reading given, allowed one of --density, --bottle,"
                + " --sample, --index; use the one you trust most"),
        Arguments.of(
            RECORD + "|--label|99 %",
            "--label: given beside a record of recovery, which shows it; leave it" + " out"),
        Arguments.of(
            "assay|--mass|120 g|--oil|sunflower|1 l|--alcohol|methanol|200 ml",
            "--catalyst: not given; write lye and mass, such as NaOH \"3.5 g\"; a recovered jar"
                + " needs it"),
        Arguments.of(
            RECORD + "|--taken-out|adsorbent|3 g",
            "--taken-out: adsorbent given, but none was added; write --added adsorbent with its"
                + " amount"),
        Arguments.of(
            "assay|ph|--volume|500 ml|--from|9.5|--to|10|--with|HCl|--strength|0.1 mol/l",
            "pH wanted: 10.0 given, allowed below 9.5, the pH now, with"
                + " hydrochloric acid; to raise it use lye"),
        Arguments.of(
            "assay|ph|--volume|500 ml|--from|acid|--to|10|--with|HCl|--strength|0.1 mol/l",
            "--from: \"acid\" given, allowed a pH, 0 to 14; write one number without a unit"));
  }

  /** A litre caught of 220 ml left "from none to 0 g" of methanol in the jar. */
  @Test
  void noMoreComesOutThanWentIn() {
    assertThat(run(RECORD + "|--alcohol-out|1 l")).isEqualTo(2);
    assertThat(terminal.err())
        .containsPattern("alcohol caught: 79\\d g given, allowed at most the 17\\d g that went in;")
        .contains("what was caught beyond that is water, so write the alcohol alone");

    assertThat(run(RECORD + "|--acid|HCl|30 ml|10 %|--salt-out|5 kg")).isEqualTo(2);
    assertThat(terminal.err())
        .containsPattern(
            "salt filtered off: 5000 g given, allowed about the [5-9][.0-9]* g that acid");

    assertThat(run(RECORD + "|--acid|HCl|30 ml|10 %|--salt-out|4 g|--alcohol-out|100 ml")).isZero();
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void refusesInOneSentence(String words, String sentence) {
    assertThat(run(words)).isEqualTo(2);
    assertThat(terminal.err()).isEqualToNormalizingNewlines("starchfilm: " + sentence + "\n");
    assertThat(terminal.out()).isEmpty();
  }

  @Test
  void everyMistakeIsToldAtOnce() {
    assertThat(run("assay|--mass|lots|--bottle|52 g|258|303 g")).isEqualTo(2);
    assertThat(terminal.err().lines())
        .containsExactly(
            "starchfilm: --at: not given; write the temperature of the jar when it was read, such"
                + " as 20C",
            "starchfilm: --bottle: \"258\" given, allowed a mass, such as 412 g or 8 oz; add"
                + " the unit",
            "starchfilm: --mass: \"lots\" given, allowed a mass or a volume, such as 250 g or 200"
                + " ml; write one number with its unit");
  }

  @Test
  void saysWhatItTookForGranted() {
    run("assay|--mass|400 ml|--label|99.5 %");
    assertThat(oneLine(terminal.out()))
        .contains("the jar measured at 20 °C, with the density of 99.5 % glycerol");
    run(RECORD);
    assertThat(oneLine(terminal.out()))
        .contains("an acid value of the oil of 0.3 mg KOH/g", "sodium hydroxide pellets of 9");
  }

  @Test
  void unknownOilListsTheKnown() {
    assertThat(
            run("assay|--mass|120 g|--oil|walnut|1 l|--alcohol|methanol|220 ml|--catalyst|KOH|9 g"))
        .isEqualTo(2);
    assertThat(terminal.err())
        .startsWith("starchfilm: --oil: \"walnut\" given, allowed rapeseed, sunflower,");
  }

  /** 1 L at pH 12 takes 100 mL of 0.1 mol/L acid: a general chemistry exercise. */
  @Test
  void phTellsMillilitresAndWhyToGoWeaker() {
    assertThat(
            run("assay|ph|--volume|1 l|--from|12|--to|7|--with|hydrochloric|--strength|0.1 mol/l"))
        .isZero();
    assertThat(oneLine(terminal.out()))
        .startsWith("Add about 100 ml of hydrochloric acid (0.1 mol/l), a little at a time")
        .contains("No buffer was assumed, so this is the least you need")
        .contains("That is why a weaker solution does not overshoot.")
        .contains("Add them to water, never water to them");
  }

  /** 4 % NaOH is 1.04 mol/L (CRC Handbook); from pH 2 to 7 a litre takes 0.01 mol, 9.6 mL. */
  @Test
  void phTakesAStrengthInPerCent() {
    run("assay|ph|--volume|1 l|--from|2|--to|7|--with|NaOH|--strength|4 %|--soap|0 g");

    assertThat(terminal.out()).startsWith("Add about 9.6 ml of sodium hydroxide");
  }

  /** 5 mol/l of HCl is 16.8 %, 2.9 mol/l 10.1 % (CRC Handbook: 10 % is 2.87 mol/l). */
  @ParameterizedTest
  @CsvSource({
    "H2SO4, 98 %, 8",
    "NaOH, 40 %, 4",
    "HCl, 5 mol/l, 8",
    "HCl, 2.95 mol/l, 8",
    "vinegar, 25 %, 8",
    "citric, 50 %, 8",
    "baking soda, 100 %, 4"
  })
  void phRefusesToDoseWhatIsStrongerThanTenPerCent(String what, String strength, String from) {
    assertThat(
            run(
                "assay|ph|--volume|500 ml|--from|%s|--to|6.5|--with|%s|--strength|%s"
                    .formatted(from, what, strength)))
        .isEqualTo(2);
    assertThat(terminal.out()).isEmpty();
    assertThat(terminal.err())
        .contains("allowed up to 10 %; dilute it first, acid or lye into water and never water");
  }

  @Test
  void phOffersWhatAHomeHasBeforeLye() {
    run("assay|ph|--volume|1 l|--from|4|--to|6.5|--with|NaOH|--strength|1 %");
    assertThat(oneLine(terminal.out())).contains("At home baking soda does the same");

    run("assay|ph|--volume|1 l|--from|4|--to|6.5|--with|baking soda|--strength|5 %");
    assertThat(oneLine(terminal.out()))
        .contains("Add about", "ml of baking soda (5 %)", "as it escapes, the pH rises further")
        .doesNotContain("no instruction");
  }

  @Test
  void jsonHoldsTheRangeOrSaysWhyItIsWithheld() throws IOException {
    run(RECORD + "|--acid|HCl|30 ml|10 %|--density|1.20 g/ml|--at|21 C|--json|-");
    JsonNode one = new ObjectMapper().readTree(terminal.out());
    JsonNode jar = one.path("rows").path(0);
    double pure = jar.path("pure_glycerol_g").asDouble();
    assertThat(one.path("pure_glycerol_g").path("middle").asDouble()).isEqualTo(pure);
    assertThat(jar.path("pure_glycerol_g_low").asDouble()).isBetween(75.0, pure - 0.3);
    // The oil bound 95.5 g by its saponification value.
    assertThat(jar.path("pure_glycerol_g_high").asDouble()).isBetween(pure, 95.5);
    assertThat(jar.has("withheld")).isFalse();
    assertThat(one.path("cautions").toString()).contains("methanol");

    Terminal other = new Terminal(Path.of(""));
    String[] tooHeavy =
        ("assay|--mass|900 g|--oil|rapeseed|1 l|--alcohol|methanol|220 ml|--catalyst|NaOH|3.5 g"
                + "|--acid|HCl|30 ml|10 %|--density|1.15|--at|20 C|--json|-")
            .split("\\|", -1);
    assertThat(other.run(tooHeavy)).isZero();
    JsonNode withheld = new ObjectMapper().readTree(other.out());
    JsonNode two = withheld.path("rows").path(0);
    assertThat(two.path("withheld").asText()).contains("the oil held no more than 93.8 g");
    assertThat(two.has("pure_glycerol_g")).isFalse();
    assertThat(withheld.path("withheld")).isEqualTo(two.path("withheld"));
    assertThat(withheld.has("pure_glycerol_g")).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"milky, filter a sample", "layers, draw the clear lower layer off"})
  void refusesToReadAJarThatIsNotClearAndTellsWhatSettlesIt(String looks, String way) {
    assertThat(run("assay|--mass|500 g|--density|1.2|--at|20 C|--looks|" + looks)).isEqualTo(2);
    assertThat(terminal.err()).contains("allowed clear", way);
  }

  private int run(String words) {
    return terminal.run(words.split("\\|", -1));
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
