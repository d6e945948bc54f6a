package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table of old trials turned into files. The clock stands at 20 April 2026, 12:00. */
class NewFromTableTest {
  private static final String HEAD =
      "name;poured_at;recipe.starch.kind;recipe.starch.mass_g;recipe.starch[2].kind;"
          + "recipe.starch[2].mass_g;recipe.glycerol.mass_g;recipe.water.mass_g;"
          + "pour.wet_thickness_mm;room.air_C;room.rh_pct;dry_thickness_um;rating;_mine\n";

  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() {
    terminal = new Terminal(folder);
  }

  /** A column of one's own is read as nothing, and of two that say the same neither wins. */
  @Test
  void headsMayBeginWithACapitalAndSayAThingOnce() throws IOException {
    String table = "Name,Starch,Water g,%s,Rating\nA,potato 20 g,360,3,4\n";
    Path file = Files.writeString(folder.resolve("t.csv"), table.formatted("_rating"));
    assertThat(terminal.run("new", "--from", "t.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("a.json"))).contains("\"rating\" : 4");

    Files.writeString(file, table.formatted("stars"));
    assertThat(terminal.run("new", "--from", "t.csv")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err())
        .contains(
            "rating: \"4\" given, allowed one cell of a row for rating; column 4 says it, too");
  }

  /** A mass and a volume of one thing, too, and what a cell says besides what its head asks. */
  @ParameterizedTest
  @CsvSource({
    "Water g;Wasser, 300;360, recipe.water.mass_g",
    "Wasser;Water g, 300 ml;360, recipe.water.volume_ml",
    "glycerol;glycerin, 5;6, recipe.glycerol.mass_g",
    "Starch;St\u00E4rke, potato;corn, recipe.starch.kind",
    "recipe.starch.mass_g;starch, 20;potato 25 g, recipe.starch.mass_g",
    "starch;recipe.starch.mass_g, potato 25 g;20, recipe.starch.mass_g",
    "pour.plate.length_mm;plate, 250;300x200mm glass, pour.plate.length_mm"
  })
  void noAmountIsTakenFromTwoColumns(String heads, String cells, String twice) throws IOException {
    Files.writeString(folder.resolve("t.csv"), "name;%s\nA;%s\n".formatted(heads, cells));

    assertThat(terminal.run("new", "--from", "t.csv")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err())
        .contains("given, allowed one cell of a row for " + twice + "; column 2 says it, too");
    assertThat(folder.resolve("a.json")).doesNotExist();
  }

  @Test
  void aSecondStarchIsNumberedAsTheRefusalSays() throws IOException {
    String table = "name,starch,%s,water\nA,potato 20g,corn 3g,360\n";
    Path file = Files.writeString(folder.resolve("t.csv"), table.formatted("starch"));
    assertThat(terminal.run("new", "--from", "t.csv")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("or put [2] behind it if it is of a second one");

    Files.writeString(file, table.formatted("starch[2]"));
    assertThat(terminal.run("new", "--from", "t.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("a.json"))).contains("potato", "corn");
  }

  @Test
  void aTableTakesAnHourInAnyWords() throws IOException {
    Files.writeString(
        folder.resolve("old.csv"),
        "name;starch;water;poured\n"
            + "A;potato 20 g;360;hier 18h30\n"
            + "B;potato 20 g;360;27 Nov 2025 6pm\n"
            + "C;potato 20 g;360;27/11/2025\n"
            + "K\u00FCche, gro\u00DF;potato 20 g;360;\n");

    assertThat(terminal.run("new", "--from", "old.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("a.json"))).contains("2026-04-19T18:30");
    assertThat(Files.readString(folder.resolve("b.json"))).contains("2025-11-27T18:00");
    assertThat(Files.readString(folder.resolve("c.json")))
        .contains("\"poured_at\" : \"2025-11-27\"");
    assertThat(folder.resolve("kuche-gross.json")).exists();
  }

  @Test
  void aTableHasColumnsForWhatOptionsSayAndTellsThemApartByTheirUnits() throws IOException {
    Files.writeString(
        folder.resolve("old.csv"),
        "name;starch;starch g;glycerol g;salt %;origin;water g;paste \u00B0F;cook lost g;rim mm\n"
            + "A;potato;20;6;3;zur\u00FCckgewonnen;360;140;25;5\n");

    assertThat(terminal.run("new", "--from", "old.csv")).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"salt_pct\" : 3", "\"origin\" : \"recovered\"", "\"paste_C\" : 60")
        .contains("\"water_lost_g\" : 25", "\"rim_height_mm\" : 5")
        .doesNotContain("salt_g", "poured_g");
  }

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
        .contains("\"mass_g\" : 21", "\"kind\" : \"potato\"", "\"poured_at\" : \"2026-03-14\"")
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
}
