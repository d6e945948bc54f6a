package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
  void takesPartsWithoutCommasBetween() throws IOException {
    terminal.run(
        "new",
        "20 g potato 6 g glycerol 360 g water; 20C,50% poured yesterday 18:30 3 mm deep; called A");

    assertThat(Files.readString(folder.resolve("a.json")))
        .as(terminal.err())
        .contains(
            "\"poured_at\" : \"2026-04-19T18:30\"",
            "\"wet_thickness_mm\" : 3",
            "\"mass_g\" : 6",
            "\"mass_g\" : 360");

    terminal.run("new", "20 g potato, 360 g water; 2 glass plates 30x20 cm 3 mm deep; called B");
    assertThat(Files.readString(folder.resolve("b.json")))
        .as(terminal.err())
        .contains("\"plates\" : 2", "\"wet_thickness_mm\" : 3");
  }

  @Test
  void takesGlycerolFromTheJarThatALineNames() throws IOException {
    terminal.run("assay", "--mass", "300 g", "--label", "86%", "--keep", "b");
    terminal.run("new", "potato 20 g, 6 g glycerol from b, 360 g water; called A");

    assertThat(Files.readString(folder.resolve("a.json")))
        .as(terminal.err())
        .contains("\"jar\" : \"b\"");
    assertThat(terminal.run("new", "potato 20 g, 6 g glycerol from c, 360 g water; called B"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err())
        .contains("\"c\" given, allowed a jar kept in this folder: b; keep it");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5 g glycerol | \"5 g glycerol\" given beside \"6 g glycerol\", which says the same thing",
        "1 cup of water | \"1 cup of water\" given beside \"360 g water\", which says the same"
            + " thing",
        "3/4/2026 | this could be 3 Apr or 4 Mar; write the month as a word",
        "1/2 ?? | \"1/2 ??\" not understood",
        "2500 m | \"2500 m\" not understood; understood so far: \"20 g potato\"",
        "rim 3mm | \"rim 3mm\" not understood; understood so far:",
        "800 hPa | \"800 hPa\" not understood",
        "5 rice | \"5\" given, allowed a mass or a volume",
        "poured 3/4/2026 18:30 | this could be 3 Apr or 4 Mar; write the month as a word"
      })
  void saysWhyAPartOfALineCannotBeMeant(String part, String why) {
    assertThat(terminal.run("new", "20 g potato, 6 g glycerol, 360 g water; " + part))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains(why);
  }

  @Test
  void notesNothingThatIsOnlyAssumed() throws IOException {
    terminal.run("new", "20 g potato, 6 g glycerol, 360 g water; 24 cm round steel; 20C; called A");
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("thickness of the plate itself", "a still room, 0.1 m/s", "35 to 70 %");
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("steel", "\"air_C\" : 20")
        .doesNotContain("thickness_mm", "rh_pct", "air_speed_m_per_s");

    terminal.run("new", "--from", "a.json", "--rh", "60%", "--name", "B");
    assertThat(Files.readString(folder.resolve("b.json")))
        .contains("\"rh_pct\" : 60")
        .doesNotContain("air_speed_m_per_s");
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
  @ValueSource(
      strings = {
        "2026-04-18, 18:30",
        "18.4.2026, 18:30 Uhr",
        "18.4.2026 18:30",
        "am 18.4.2026 um 18:30 Uhr gegossen"
      })
  void dayAndHourOfThePourMayStandApart(String poured) throws IOException {
    assertThat(terminal.run("new", "20 g potato, 360 g water; glass 30x20 cm; called A; " + poured))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
    JsonNode read = new ObjectMapper().readTree(folder.resolve("a.json").toFile());
    assertThat(read.path("poured_at").asText()).isEqualTo("2026-04-18T18:30");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "poured 450 g on 3 A4 glass plates             | true",
        "3 glass plates 30x20 cm; poured 450 g         | true",
        "3 glass plates 30x20 cm; 150 g a plate        | false",
        "150 g of paste on each of 3 trays 20x30 cm    | false",
        "3 glass plates 30x20 cm; 150 g on each plate  | false",
        "3 Glasplatten 30x20 cm; 150 g pro Platte      | false",
        "3 Glasplatten 30x20 cm; je 150 g              | false",
        "3 Glasplatten 30x20 cm; je Platte 150 g       | false",
        "3x 30x20 cm verre; 150 g par plaque           | false",
        "3x 30x20 cm vidrio; 150 g por placa           | false",
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

  /** Without quotes a shell hands over each word by itself. */
  @Test
  void takesALineWithoutQuotes() throws IOException {
    assertThat(terminal.run("new", "20", "g", "potato,", "360", "g", "water,", "called", "A"))
        .as(terminal.err())
        .isZero();
    assertThat(Files.readString(folder.resolve("a.json"))).contains("\"mass_g\" : 360");
  }

  @Test
  void saysWhatItUnderstoodSoFar() {
    terminal.run("new", "20 g potato; 400 g water; hello there");

    assertThat(terminal.err())
        .contains(
            "\"hello there\" not understood; understood so far: \"20 g potato\", \"400 g water\";");
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
  void needsSomethingToBeginWith() {
    assertThat(terminal.run("new")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("new needs what you cooked");
  }

  @ParameterizedTest
  @ValueSource(strings = {"from the market", "from the pharmacy", "aus der Apotheke"})
  void glycerolFromAShopIsBoughtAndThatIsSaid(String where) throws IOException {
    int exit =
        terminal.run(
            "new", "20 g potato, 6 g glycerol " + where + ", 360 g water, 30x20cm, 20C 50%");

    assertThat(exit).as(terminal.err()).isZero();
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("Glycerol \"" + where + "\" is taken as bought with a label");
    assertThat(Files.readString(folder.resolve("as-cooked.json")))
        .contains("\"origin\" : \"bought\"");
  }

  @Test
  void ofNoGlycerolNothingAboutAJarIsAssumed() {
    terminal.run("new", "20 g potato, 0 g glycerol, 360 g water, 30x20cm, 20C 50%");

    assertThat(terminal.out())
        .contains("Not given, so assumed")
        .doesNotContain("--purity", "--salt");
  }

  @ParameterizedTest
  @CsvSource({"no glycerol, 0", "0 glycerol, 0", "ohne Glycerin, 0"})
  void noGlycerolMayBeSaid(String part, String grams) throws IOException {
    int exit = terminal.run("new", "20 g potato, " + part + ", 360 g water, 30x20cm, 20C 50%");

    assertThat(exit).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("as-cooked.json")))
        .containsPattern("\"glycerol\" : \\{\\s+\"mass_g\" : " + grams + "\\s");
  }

  @Test
  void nothingNeedsNoUnit() {
    assertThat(
            terminal.run("new", "20 g potato, 6 g glycerol, 360 g water, 30x20cm", "--salt", "0"))
        .as(terminal.err())
        .isZero();
    assertThat(terminal.run("new", "20 g potato, 360 g water, 30x20cm", "--air", "0")).isEqualTo(2);
    assertThat(terminal.err()).contains("--air: \"0\" given, allowed a temperature");
  }

  @Test
  void platesWithoutAMaterialAreGlassWhichIsSaidAndNotNoted() throws IOException {
    assertThat(terminal.run("new", "60 g potato", "900 g water", "3 plates 30x20cm")).isZero();

    assertThat(terminal.out()).contains("Not given, so assumed: “3 plates 30x20cm” as glass;");
    assertThat(Files.readString(folder.resolve("as-cooked.json"))).doesNotContain("material");
    terminal.run("dry", "as-cooked.json", "--json", "-");
    assertThat(terminal.out()).contains("material of the plate as glass");
  }

  @Test
  void platesOfAMaterialAreNotSaidToBeGlass() {
    terminal.run("new", "60 g potato", "900 g water", "3 steel plates 30x20cm");

    assertThat(terminal.out()).contains("Not given, so assumed").doesNotContain("as glass");
  }
}
