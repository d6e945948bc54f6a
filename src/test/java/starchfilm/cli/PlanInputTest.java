package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How a plan's words are read: what is refused, and what is taken for granted. */
class PlanInputTest {
  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  private int plan(String... more) {
    return terminal.run(words(more));
  }

  private static String[] words(String... more) {
    return PlanCommandTest.words(more);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--starch    | potatoe           | --starch: \"potatoe\" given, allowed corn, waxy corn,"
            + " high-amylose corn, potato, tapioca, wheat, rice; did you mean potato?",
        "--starch    | gelatin           | --starch: \"gelatin\" given, allowed corn, waxy corn,"
            + " high-amylose corn, potato, tapioca, wheat, rice; gelatin is a protein; its film is"
            + " not modelled here",
        "--by        | 2026-04-01        | --by: \"2026-04-01\" given, allowed a moment after now,"
            + " Mon 20 Apr, 12:00; it is past; write a time from now, such as 5d, or a later day",
        "--by        | soonish           | --by: \"soonish\" given, allowed a time from now, such"
            + " as 5d or 36h, or a day to come, such as friday, sat noon, 28 Nov 18:00 or"
            + " 2026-12-01; write it like one of these",
        "--pure      | 300g              | --pure: 300g of pure glycerol given in a jar of 250g,"
            + " allowed 0 g to 250g; check both, or assay the jar",
        "--purity    | 120%              | --purity: 120% given, allowed more than 0 to 100 %;"
            + " write the glycerol in the jar in per cent, such as 82%",
        "--salt      | 30%               | --salt: 30% beside the glycerol makes more than 100 % of"
            + " the jar, allowed 100 % together; what is left is water",
        "--plates    | 4x                | --plate: \"4x\" given, allowed number, sides and"
            + " material, such as 4x300x200mm glass or 2x 24cm round steel; write it like one of"
            + " these",
        "--plates    | 4x300x200mm glss  | --plate: \"glss\" given, allowed glass, polypropylene,"
            + " acrylic, ptfe, silicone, laminate, steel, enamel, aluminium, polyester, baking"
            + " paper, wood, other; did you mean glass?",
        "--glycerol  | 250g 82%          | --glycerol: \"250g 82%\" given, allowed a mass or a"
            + " volume, such as 250 g or 200 ml; write the per cent as --purity",
        "--glycerol  | unknown           | --glycerol: \"unknown\" given, allowed a mass or a"
            + " volume, such as 250 g or 200 ml; a plan starts from what there is: weigh the jar,"
            + " or write none",
        "--room      | attic             | --room: \"attic\" given, allowed temperature and"
            + " humidity, such as 19C,55% or 8-18C,50-80%, a hygrometer log, such as shed.csv, a"
            + " room of your trials, or one of: sunny window sill, window sill, outdoors in summer,"
            + " cellar, airing cupboard, oven ajar, food dehydrator; no trial in this folder was"
            + " poured in a room of that name",
        "--room      | -5C,55%           | --room: \"-5C,55%\" given, allowed 1 to 90 °C; write the"
            + " air beside the plates",
        "--room      | 19C,150%          | --room: \"19C,150%\" given, allowed 0 to 100 %; write"
            + " the air beside the plates",
        "--feel      | brittle           | --feel: \"brittle\" given, allowed stiff, flexible,"
            + " stretchy; write one of these",
        "--thickness | 5cm               | --thickness: 50000 µm given, allowed 10 to 1000 µm; cast"
            + " starch film is never outside this",
        "--strength  | 500MPa            | --strength: 500 MPa given, allowed 0 to 200 MPa; cast"
            + " starch film is never outside this",
        "--stretch   | 900%              | --stretch: 900 % given, allowed 0 to 300 %; cast"
            + " starch film is never outside this",
        "--scale     | 0g                | --scale: 0 g given, allowed more than 0 to"
            + " 100 g; write the smallest step its display shows, such as 1 g or 0.1 g",
        "--sure      | 100%              | how sure the date must be: 100 % given, allowed 5 to 99"
            + " %; 80 % is a usual choice",
        "--use       | 50%,-30C          | --use: \"50%,-30C\" given, allowed -20 to 80 °C; write"
            + " the air where the film is used",
        "--use       | damp              | --use: \"damp\" given, allowed humidity and temperature,"
            + " such as 50%,23C; write it like this",
      })
  void badInputGetsOneSentence(String option, String given, String sentence) {
    List<String> words = new ArrayList<>(Arrays.asList(words()));
    int place = words.indexOf(option);
    if (place >= 0) {
      words.set(place + 1, given);
    } else {
      words.add(option);
      words.add(given);
    }
    if (option.equals("--pure")) {
      words.remove("--purity");
      words.remove("82%");
      words.remove("--salt");
      words.remove("3%");
    }

    assertThat(terminal.run(words.toArray(String[]::new))).isEqualTo(2);
    assertThat(terminal.err()).isEqualToNormalizingNewlines("starchfilm: " + sentence + "\n");
    assertThat(terminal.out()).isEmpty();
  }

  @Test
  void wishesThatContradictEachOtherAreRefused() {
    assertThat(plan("--strength", "20MPa", "--stretch", "40%")).isEqualTo(2);

    assertThat(terminal.err())
        .startsWith(
            "starchfilm: 20 MPa of strength and 40 % of stretch: no amount of glycerol gives both"
                + " in air of 50 % relative humidity; ")
        .endsWith("; give up one of them" + System.lineSeparator());
  }

  @Test
  void whatIsNeededIsAskedForAllTogether() {
    assertThat(terminal.run("plan", "--starch", "pottato", "--by", "soonish")).isEqualTo(2);
    assertThat(terminal.err())
        .contains(
            "--glycerol: not given; write what the jar holds",
            "--starch: \"pottato\" given",
            "--by: \"soonish\" given");
  }

  @Test
  void filmForTheFreezerIsPlannedAndAnAssumedWarmthIsTold() {
    assertThat(plan("--use", "50%,-10C", "--feel", "stiff")).isZero();
    assertThat(plan("--use", "40%")).isZero();
    assertThat(terminal.out().replaceAll("\\s+", " ")).contains("; 23 °C where the film is used.");
  }

  @Test
  void saysThatOfARangeTheMiddleCounts() {
    String typed = "plan --glycerol 240-260g --origin bought --use 40-60%,23C --starch";
    assertThat(terminal.run((typed + " potato_90-110g").replace('_', ' ').split(" "))).isZero();
    assertThat(terminal.out())
        .contains("Of 240-260g the middle counts, 250 g.", "Of 90-110g the middle counts, 100 g.")
        .contains("Of a range of the air that the film is used in, the middle counts.");
  }

  @Test
  void whatIsMissingIsAskedForOnceAndHidesNoMistake() {
    assertThat(terminal.run("plan", "--glycerol=-5g")).isEqualTo(2);
    assertThat(terminal.err().lines())
        .containsExactly(
            "starchfilm: --starch: not given; write a starch you have, such as potato",
            "starchfilm: --glycerol: \"-5g\" given, allowed 0 g or more; write the grams in the"
                + " jar");
  }

  @Test
  void anOptionWrittenTwiceIsToldAndNothingElse() {
    assertThat(plan("--plates", "2x 24cm round steel", "--glycerol", "3g")).isEqualTo(2);
    assertThat(terminal.err().lines())
        .containsExactly(
            "starchfilm: --glycerol: given more than once, allowed once; leave all but one out");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1x 5x5cm glass", "1x 5cm round", "1x 6cm round"})
  void smallDishesOnACoarseBalanceArePlanned(String dish) {
    List<String> words = new ArrayList<>(Arrays.asList(words()));
    words.set(words.indexOf("--plates") + 1, dish);

    assertThat(terminal.run(words.toArray(String[]::new))).isBetween(0, 1);
    assertThat(terminal.err()).doesNotContain("given");
  }

  @Test
  void airHumidityAndSpeedMayBeWrittenOneByOneAndASpeedBesideARoom() {
    assertThat(plan("--rh", "40%")).isEqualTo(2);
    assertThat(terminal.err()).contains("--rh: given beside --room, which says it too");
    List<String> words = new ArrayList<>(Arrays.asList(words("--air", "19C", "--rh", "55%")));
    words.remove("--room");
    words.remove("19C,55%");

    assertThat(plan("--speed", "0.5")).isZero();
    Terminal again = new Terminal(folder);
    words.addAll(List.of("--speed", "0.5"));
    assertThat(again.run(words.toArray(String[]::new))).isZero();

    assertThat(again.out()).isEqualTo(terminal.out()).doesNotContain("a still room");
  }

  @Test
  void saysWhatItTookForGranted() {
    plan();

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains(
            "Not given, so assumed: vinegar of 5 % acid; plates without a rim;"
                + " thin edge and thick spot 25 % from the average; a pot that holds 2 l;"
                + " a balance that shows 1 g; film of about 50 to 250 µm when dry, as people cast"
                + " at home; a still room, 0.1 m/s; a film used in air"
                + " of 50 % RH and 23 °C; 7 days after it dried.");
  }
}
