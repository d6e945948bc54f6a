package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Trials begun by typing, and from an earlier one. The clock stands at 20 April 2026, 12:00. */
class NewCommandTest {
  private static final String COOKED =
      "20.0 g potato, 6 g glycerol 88%, 360 g water, vinegar 10 g 5%; 2x 30x20cm glass, 3 mm;"
          + " cooked 10 min at 90C; plate 598 g; yesterday 18:30; in the Kitchen 20C,55%; called"
          + " First try";

  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() {
    terminal = new Terminal(folder);
  }

  @Test
  void readsWhatWasCookedFromOneLine() throws IOException {
    assertThat(terminal.run("new", COOKED)).as(terminal.err()).isEqualTo(ExitCodes.DONE);

    assertThat(Files.readString(folder.resolve("first-try.json")))
        .contains(
            "\"name\" : \"First try\"",
            "\"poured_at\" : \"2026-04-19T18:30\"",
            "\"kind\" : \"potato\"",
            "\"mass_g\" : 20.0",
            "\"purity_pct\" : 88",
            "\"acidity_pct\" : 5",
            "\"minutes\" : 10",
            "\"top_C\" : 90",
            "\"length_mm\" : 300",
            "\"tare_g\" : 598",
            "\"plates\" : 2",
            "\"wet_thickness_mm\" : 3",
            "\"name\" : \"Kitchen\"",
            "\"rh_pct\" : 55")
        .doesNotContain("invented");
    assertThat(terminal.run("check", "first-try.json")).isEqualTo(ExitCodes.DONE);
  }

  @ParameterizedTest
  @CsvSource({
    "gegossen gestern 18:30, 2026-04-19T18:30",
    "hier 18h30, 2026-04-19T18:30",
    "poured Apr 19 6:30 pm, 2026-04-19T18:30",
    "poured last night, 2026-04-19T21:00"
  })
  void readsTheTimeOfThePourInTheWordsANoteTakes(String words, String noted) throws IOException {
    terminal.run("new", "20 g potato; 360 g water; 20C,50%; " + words + "; called A");

    assertThat(Files.readString(folder.resolve("a.json"))).as(terminal.err()).contains(noted);
  }

  @Test
  void takesAWarmBenchForABenchAndNotForTheAir() throws IOException {
    terminal.run("new", "20 g potato; 360 g water; 20C,50%; warm bench 95F; called A");

    assertThat(Files.readString(folder.resolve("a.json")))
        .as(terminal.err())
        .contains("\"bench_C\" : 35", "\"air_C\" : 20");
  }

  @Test
  void refusesAnOptionThatUndoesTheNamedChange() {
    terminal.run("new", COOKED);

    assertThat(
            terminal.run("new", "--from", "first-try.json", "--but", "thinner", "--wet", "2.8mm"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("--but: \"thinner\" given beside another change");
    assertThat(terminal.run("new", "--from", "first-try.json", "--but", "thinner", "--rh", "60%"))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
  }

  @Test
  void aTableTakesAnHourInAnyWords() throws IOException {
    Files.writeString(
        folder.resolve("old.csv"),
        "name;starch;water;poured\nA;potato 20 g;360;hier 18h30\nB;potato 20 g;360;27 Nov 2025 6pm\n"
            + "C;potato 20 g;360;27/11/2025\n");

    assertThat(terminal.run("new", "--from", "old.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("a.json"))).contains("2026-04-19T18:30");
    assertThat(Files.readString(folder.resolve("b.json"))).contains("2025-11-27T18:00");
    assertThat(Files.readString(folder.resolve("c.json"))).contains("2025-11-27T12:00");
  }

  @Test
  void aTableHasColumnsForWhatOptionsSayAndTellsThemApartByTheirUnits() throws IOException {
    Files.writeString(
        folder.resolve("old.csv"),
        "name;starch;starch g;glycerol g;salt %;origin;water g;paste \u00B0F;cook lost g;rim mm\n"
            + "A;potato;20;6;3;recovered;360;140;25;5\n");

    assertThat(terminal.run("new", "--from", "old.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"salt_pct\" : 3", "\"origin\" : \"recovered\"", "\"paste_C\" : 60")
        .contains("\"water_lost_g\" : 25", "\"rim_height_mm\" : 5")
        .doesNotContain("salt_g", "poured_g");
  }

  @Test
  void takesARoomByItsNameAlone() throws IOException {
    terminal.run("new", "20 g potato, 6 g glycerol, 360 g water; in the Kitchen; called A");

    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"name\" : \"Kitchen\"", "\"from\" : 15", "\"to\" : 25");
  }

  /** The same plate by its file and as typed: what a place leaves open goes into the file. */
  @Test
  void keepsHowWidelyAPlaceDiffers() throws IOException {
    terminal.run("new", "20 g potato, 6 g bought glycerol, 360 g water; cellar; called A");
    Terminal byFile = new Terminal(folder);
    Terminal typed = new Terminal(folder);
    assertThat(byFile.run("dry", "a.json", "--json", "-")).as(byFile.err()).isZero();
    String[] asTyped = {
      "dry",
      "--starch",
      "20 g potato",
      "--glycerol",
      "6 g",
      "--origin",
      "bought",
      "--water",
      "360 g",
      "--room",
      "cellar",
      "--json",
      "-"
    };
    assertThat(typed.run(asTyped)).as(typed.err()).isZero();

    for (String end : List.of("low_h", "middle_h", "high_h")) {
      assertThat(dryThrough(byFile, end)).isCloseTo(dryThrough(typed, end), withinPercentage(2));
    }
  }

  private static double dryThrough(Terminal terminal, String end) throws IOException {
    JsonNode json = new ObjectMapper().readTree(terminal.out());
    return json.at("/spots/thick_spot/dry_through/" + end).asDouble();
  }

  @ParameterizedTest
  @CsvSource({
    "6 g bought glycerol 88%, bought",
    "6 g glycerol 88% bought, bought",
    "recovered glycerol 6 g, recovered",
    "6 g glycerol; recovered, recovered",
    "6 g gekauftes Glycerin, bought",
    "6 g glycérine récupérée, recovered"
  })
  void keepsWhereTheGlycerolComesFrom(String glycerol, String origin) throws IOException {
    assertThat(terminal.run("new", "20 g potato, 360 g water; " + glycerol + "; called A"))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);

    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"origin\" : \"" + origin + "\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "150 g on a glass plate 30 x 20 cm            | poured_g          | 150",
        "poured 150 g on glass 30x20cm                | poured_g          | 150",
        "150 g of paste on each of 2 trays 20x30 cm   | poured_g          | 150",
        "poured 150 g of paste yesterday on 2 trays   | poured_g          | 150",
        "3 mm on glass 30x20cm                        | wet_thickness_mm  | 3",
        "poured 3 mm deep in a baking tray            | wet_thickness_mm  | 3"
      })
  void readsWhatWasPouredOnWhat(String pour, String field, double value) throws IOException {
    assertThat(terminal.run("new", "20 g potato, 360 g water; " + pour + "; called A"))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
    JsonNode read = new ObjectMapper().readTree(folder.resolve("a.json").toFile()).path("pour");
    assertThat(read.path(field).asDouble()).isEqualTo(value);
    assertThat(read.path("plate").has("length_mm")).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "poured 450 g on 3 A4 glass plates             | true",
        "3 glass plates 30x20 cm; poured 450 g         | true",
        "3 glass plates 30x20 cm; 150 g a plate        | false",
        "150 g of paste on each of 3 trays 20x30 cm    | false",
        "poured 150 g on a glass plate 30x20 cm        | false"
      })
  void saysThatAMassIsOfEachPlateWhereThatIsNotWritten(String pour, boolean said) {
    assertThat(terminal.run("new", "20 g potato, 360 g water; " + pour))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
    assertThat(terminal.out().contains("450 g of paste is taken as what lies on each of the 3"))
        .isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20 g potato; 400 g water; glass 30x20cm ??? | glass 30x20cm ???",
        "20 g potato; 400 g water; hello there       | hello there",
        "20 g potato; 400 g water; 3 spoons of hope  | hope",
        "20 gg potato; 400 g water                   | 20 gg",
        "20 g potato; 400 g water; tomorrow 18:30    | tomorrow"
      })
  void saysWhichPartItDoesNotUnderstand(String line, String part) throws IOException {
    assertThat(terminal.run("new", line)).isEqualTo(ExitCodes.WRONG_INPUT);

    assertThat(terminal.err()).contains(part).doesNotContain("Exception", "the program itself");
    assertThat(Files.list(folder)).isEmpty();
  }

  @Test
  void asksForTheStarchThatIsNotGiven() {
    String sentence = "starchfilm: --starch: no starch given; write one and its mass, such as 20 g";
    assertThat(terminal.run("new", "6 g glycerol, 360 g water; 3 mm; 20C 50%")).isEqualTo(2);
    assertThat(terminal.run("dry", "--water", "300g", "--wet", "3mm")).isEqualTo(2);
    assertThat(terminal.err().lines()).hasSize(2).allMatch(line -> line.startsWith(sentence));
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aDayThatIsNotUnderstoodIsRefusedInASentence() {
    assertThat(terminal.run("new", "20 g potato, 6 g glycerol, 360 g water", "--by", "zzz"))
        .isEqualTo(2);
    assertThat(terminal.err()).contains("--by").doesNotContain("the program itself");
  }

  @Test
  void writesNoFileThatCheckWouldRefuse() {
    String recipe = "20 g potato, 6 g glycerol, 360 g water; 30x20cm; 20C,50%";
    assertThat(terminal.run("new", recipe, "--room-name", "x".repeat(101))).isEqualTo(2);
    assertThat(terminal.run("new", recipe, "--bench", "-1C")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("room.name: 101 characters given", "--bench: \"-1C\" given, allowed 1 to 98");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void saysWhatItUnderstoodSoFar() {
    terminal.run("new", "20 g potato; 400 g water; hello there");

    assertThat(terminal.err())
        .contains("\"hello there\" not understood, but \"20 g potato\", \"400 g water\" is");
  }

  @Test
  void refusesAMillionCharacters() {
    assertThat(terminal.run("new", "potato ".repeat(150_000))).isEqualTo(ExitCodes.WRONG_INPUT);

    assertThat(terminal.err()).contains("allowed 2000").hasSizeLessThan(400);
  }

  @Test
  void writesNothingOver() {
    terminal.run("new", COOKED);
    terminal.run("new", COOKED);

    assertThat(folder.resolve("first-try-2.json")).exists();
  }

  @Test
  void poursAnEarlierTrialAgainButThinner() throws IOException {
    terminal.run("new", COOKED);

    assertThat(terminal.run("new", "--from", "first-try.json", "--but", "thinner"))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);

    assertThat(terminal.out()).contains("Changed: wet thickness 3 → 2.1 mm.");
    assertThat(Files.readString(folder.resolve("first-try-thinner.json")))
        .contains("\"from\" : \"first-try.json\"", "\"wet_thickness_mm\" : 2.1", "20.0")
        .doesNotContain("poured_at");
  }

  @ParameterizedTest
  @CsvSource({
    "more glycerol, glycerol 32 → 40 g per 100 g dry starch",
    "more water, starch in the paste 4",
    "fan, air speed 0.1 →",
    "poured hotter, paste when poured 60 → 7",
    "warmer, air 20 →"
  })
  void changesOneThingByItsWord(String word, String told) {
    terminal.run("new", COOKED);

    assertThat(terminal.run("new", "--from", "first-try.json", "--but", word))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
    assertThat(terminal.out()).containsPattern("Changed: " + told);
  }

  @Test
  void takesTheNewValueItself() throws IOException {
    terminal.run("new", COOKED);
    terminal.run("new", "--from", "first-try.json", "--wet", "1.5mm", "--name", "Thin");

    assertThat(Files.readString(folder.resolve("thin.json")))
        .contains("\"wet_thickness_mm\" : 1.5", "\"from\" : \"first-try.json\"");
  }

  @Test
  void needsSomethingToBeginWith() {
    assertThat(terminal.run("new")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("new needs what you cooked");
  }

  @Test
  void refusesAChangeItDoesNotKnowAndOneWithoutATrial() {
    terminal.run("new", COOKED);

    assertThat(terminal.run("new", "--from", "first-try.json", "--but", "wetter"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("--but: \"wetter\" given, allowed", "thinner");
    assertThat(terminal.run("new", COOKED, "--but", "thinner")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("name that trial's file with --from");
  }

  private static final String HEAD =
      "name;poured_at;recipe.starch.kind;recipe.starch.mass_g;recipe.starch[2].kind;"
          + "recipe.starch[2].mass_g;recipe.glycerol.mass_g;recipe.water.mass_g;"
          + "pour.wet_thickness_mm;room.air_C;room.rh_pct;dry_thickness_um;rating;_mine\n";

  @Test
  void turnsATableOfOldTrialsIntoFiles() throws IOException {
    Files.writeString(
        folder.resolve("old.csv"),
        HEAD
            + "One;2026-03-01 10:00;potato;20,0;Tapioca;5;6;360;3;20;45-55;110;4;x\n"
            + "Two;;corn;20;;;unknown;400;2.5;20;50;104; 118;;\n"
                .replace("104; 118", "\"104; 118\""));

    assertThat(terminal.run("new", "--from", "old.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("one.json")))
        .contains("\"mass_g\" : 20.0", "\"kind\" : \"tapioca\"", "\"from\" : 45", "\"rating\" : 4");
    assertThat(Files.readString(folder.resolve("two.json")))
        .contains("\"mass_g\" : \"unknown\"", "104", "118")
        .doesNotContain("tapioca", "_mine");
    assertThat(terminal.run("check", "one.json", "two.json")).isZero();
  }

  @Test
  void readsATableInTheWordsAndUnitsOfItsWriter() throws IOException {
    Files.writeString(
        folder.resolve("alt.csv"),
        "Versuch;Datum;Stärke;Stärke (g);Glycerin;Wasser (ml);Essig;Nassdicke (in);Luft °F;Feuchte;"
            + "Platte\n"
            + "Eins;2026-03-01 10:00;Kartoffel;20,0;1 TL;360;1 EL;1/8;68;50;Glas\n"
            + "Zwei;14.3.2026;Kartoffel 21 g;;1 TL;360;;1/8;68;50;Glas 30x20 cm\n"
            + "Drei;;2 EL Maisstärke;;1 TL;360;;1/8;68;50;Glas\n");

    assertThat(terminal.run("new", "--from", "alt.csv")).as(terminal.err()).isZero();
    assertThat(terminal.err())
        .contains("\"Wasser (ml)\" is read as recipe.water.mass_g, bare numbers in ml");
    assertThat(Files.readString(folder.resolve("eins.json")))
        .contains("\"volume_ml\" : 360", "\"mass_g\" : 20.0", "\"air_C\" : 20", "\"rh_pct\" : 50")
        .containsPattern("wet_thickness_mm\" : 3\\.");
    assertThat(Files.readString(folder.resolve("zwei.json")))
        .contains("\"mass_g\" : 21", "\"kind\" : \"potato\"", "2026-03-14T12:00")
        .contains("\"length_mm\" : 300", "\"width_mm\" : 200");
    assertThat(Files.readString(folder.resolve("drei.json")))
        .contains("\"volume_ml\" : {", "\"kind\" : \"corn\"");
    assertThat(terminal.run("check", "eins.json", "zwei.json", "drei.json")).isZero();
  }

  @Test
  void readsTheCellsOfATableAsALineOfWhatWasCooked() throws IOException {
    Files.writeString(
        folder.resolve("cells.csv"),
        "name;starch;water g;plate;wet mm\n"
            + "One;2 tbsp of cornstarch;360;2x 24cm round steel;3\n"
            + "Two;rice flour 20 g 12 %;360;A4 glass;3\n");

    assertThat(terminal.run("new", "--from", "cells.csv")).as(terminal.err()).isZero();
    assertThat(terminal.err())
        .contains("cells.csv, line 3: recipe.starch.kind: Flour is not starch");
    assertThat(Files.readString(folder.resolve("one.json")))
        .contains(
            "\"kind\" : \"corn\"", "\"volume_ml\"", "\"diameter_mm\" : 240", "\"plates\" : 2");
    assertThat(Files.readString(folder.resolve("two.json")))
        .contains("\"kind\" : \"rice\"", "\"inert_pct\"", "\"moisture_pct\" : 12")
        .contains("\"length_mm\" : 297", "\"width_mm\" : 210");
    assertThat(terminal.run("check", "one.json", "two.json")).isZero();
  }

  /**
   * A plate's usual thickness is assumed when its file is read, not noted as if it was measured.
   */
  @Test
  void aCellFillsNoFieldThatItDoesNotSpeakOf() throws IOException {
    Files.writeString(
        folder.resolve("thick.csv"),
        "name;starch;starch g;water g;pour.plate.thickness_mm;plate;wet mm\n"
            + "One;potato;20;360;2;glass 30x20 cm;3\n"
            + "Two;unknown;20;360;;glass 30x20 cm;3\n");
    Files.writeString(
        folder.resolve("later.csv"),
        "name;starch;starch g;water g;plate;pour.plate.thickness_mm;wet mm\n"
            + "Three;potato;20;360;glass 30x20 cm;2;3\n");

    assertThat(terminal.run("new", "--from", "thick.csv")).as(terminal.err()).isZero();
    assertThat(terminal.run("new", "--from", "later.csv")).as(terminal.err()).isZero();
    for (String file : List.of("one.json", "three.json")) {
      assertThat(Files.readString(folder.resolve(file))).contains("\"thickness_mm\" : 2");
    }
    assertThat(Files.readString(folder.resolve("two.json")))
        .contains("\"kind\" : \"unknown\"")
        .doesNotContain("thickness_mm\" : 4");
  }

  @Test
  void entriesOfAListMayStandInAnyOrder() throws IOException {
    Files.writeString(
        folder.resolve("order.csv"),
        "name;recipe.starch[2].kind;recipe.starch[2].mass_g;recipe.starch[1].kind;"
            + "recipe.starch[1].mass_g;water g;wet mm\nOne;corn;5;potato;20;360;3\n");
    Files.writeString(
        folder.resolve("zero.csv"),
        "name;recipe.starch[1].kind;recipe.starch[1].mass_g;recipe.starch[0].kind;"
            + "recipe.starch[0].mass_g;water g;wet mm\nTwo;corn;5;potato;20;360;3\n");

    assertThat(terminal.run("new", "--from", "order.csv")).as(terminal.err()).isZero();
    assertThat(terminal.run("new", "--from", "zero.csv")).as(terminal.err()).isZero();
    for (String file : List.of("one.json", "two.json")) {
      assertThat(Files.readString(folder.resolve(file)))
          .containsPattern("(?s)potato.*20.*corn.*5")
          .doesNotContain("\"1\"");
    }
  }

  @Test
  void namesEveryFaultOfATableByItsCellAndWritesNothing() throws IOException {
    Files.writeString(
        folder.resolve("old.csv"),
        "name,recipe.starch.kind,recipe.starch.mass_g,recipe.watr.mass_g,room.air_C\n"
            + "One,potato,-4,360,68\n"
            + "Two,sand,20,400,200\n");

    assertThat(terminal.run("new", "--from", "old.csv")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err())
        .contains("old.csv, line 1, column 4: the head: \"recipe.watr.mass_g\" given")
        .contains("did you mean recipe.water.mass_g?")
        .contains("old.csv, line 2, column 3: recipe.starch.mass_g:")
        .contains("old.csv, line 3, column 2: recipe.starch.kind: \"sand\" given, allowed")
        .contains("old.csv, line 3, column 5: room.air_C: 200 given, allowed 1 to 90")
        .contains("nothing was written");
    assertThat(folder.resolve("one.json")).doesNotExist();
  }

  @Test
  void comparesATrialWithTheOneItWasMadeFrom() throws IOException {
    String[] lines = {"3 mm; 2026-04-01 10:00; called One", "4 mm; 2026-04-02 10:00; called Two"};
    for (String rest : lines) {
      terminal.run(
          "new", "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass; 20C,55%; " + rest);
    }
    terminal.run(
        "new",
        "--from",
        "one.json",
        "--wet",
        "2 mm",
        "--poured",
        "2026-04-03 10:00",
        "--name",
        "Three");
    terminal.run("compare", ".", "--out", "page.html");

    assertThat(Files.readString(folder.resolve("page.html")))
        .contains("What changed from trial 1</h3>");
  }
}
