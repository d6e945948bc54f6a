package starchfilm.files.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.files.findings.Notice;

/** What is said of values that cannot be, word for word. */
class TrialFaultsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "recipe.glycerol.mass_g | -4 | `recipe.glycerol.mass_g: -4 given, allowed 0 to 100000 g;"
            + " write the grams weighed`",
        "recipe.glycerol.mass_g | 1e300 | `recipe.glycerol.mass_g: 1.0E300 given, allowed 0 to"
            + " 100000 g; write the grams weighed`",
        "recipe.glycerol.mass_g | `\"6,5 mm\"` | `recipe.glycerol.mass_g: \"6,5 mm\" given, allowed"
            + " a number from 0 to 100000 g, a range {\"from\": .., \"to\": ..} or \"unknown\"; mm"
            + " is a unit of length; write a mass`",
        "pour.unevenness_pct | `\"15-20 %\"` | `pour.unevenness_pct: \"15-20 %\" given, allowed a"
            + " number from 0, or more than 1 up to 90 %; a range is of no use here; write one"
            + " number`",
        "recipe.glycerol.mass_g | null | `recipe.glycerol.mass_g: null given, allowed a number from"
            + " 0 to 100000 g, a range {\"from\": .., \"to\": ..} or \"unknown\"; leave the field"
            + " out, or write \"unknown\"`",
        "recipe.glycerol.mass_g | `\"Unknown\"` | `recipe.glycerol.mass_g: \"Unknown\" given,"
            + " allowed a number from 0 to 100000 g, a range {\"from\": .., \"to\": ..} or"
            + " \"unknown\"; write \"unknown\" in small letters`",
        "recipe.glycerol.purity_pct | 0.82 | `recipe.glycerol.purity_pct: 0.82 given, allowed 0, or"
            + " more than 1 up to 100 %; this looks like a fraction; write 82 for 82 %`",
        "recipe.glycerol.purity_pct | 182 | `recipe.glycerol.purity_pct: 182 given, allowed 0, or"
            + " more than 1 up to 100 %; write the glycerol in the jar in per cent, such as 85`",
        "recipe.glycerol.salt_pct | 20 | `recipe.glycerol.salt_pct: 105 % of glycerol and salt"
            + " together given, allowed at most 100 %; lower purity_pct or salt_pct; what is left"
            + " is water`",
        "recipe.starch.0.kind | `\"tapiocca\"` | `recipe.starch[1].kind: \"tapiocca\" given,"
            + " allowed \"corn\", \"waxy corn\", \"high-amylose corn\", \"potato\", \"tapioca\","
            + " \"wheat\", \"rice\", \"unknown\"; did you mean \"tapioca\"?`",
        "recipe.starch.0.kind | `\"potatoe\"` | `recipe.starch[1].kind: \"potatoe\" given, allowed"
            + " \"corn\", \"waxy corn\", \"high-amylose corn\", \"potato\", \"tapioca\", \"wheat\","
            + " \"rice\", \"unknown\"; did you mean \"potato\"?`",
        "recipe.starch | `[]` | `recipe.starch: a recipe without starch given, allowed at least one"
            + " starch; add \"starch\": [{\"kind\": \"potato\", \"mass_g\": 20}]`",
        "recipe.starch.0.mass_g | 1e-320 | `recipe.starch[1].mass_g: 1.0E-320 given, allowed 0.01"
            + " to 100000 g; write the grams weighed`",
        "recipe.starch.0.mass_g | 1 | `recipe.starch: 0.234 % dry starch in the paste given,"
            + " allowed at least 0.5 %; check the grams of starch and of water`",
        "recipe.glycerol.mass_g | 200 | `recipe.glycerol: 1030 g glycerol per 100 g dry starch"
            + " given, allowed at most 500 g; check the grams of glycerol and of starch; such a"
            + " mixture stays liquid`",
        "recipe.inert_g | 1000 | `recipe.inert_g: 97.9 % of the solids neither starch nor glycerol"
            + " given, allowed at most 90 %; check the grams of other solids and of starch`",
        "use.rh_pct | 100 | `use.rh_pct: 100 given, allowed 0, or more than 1 up to 99 %; write the"
            + " relative humidity where the film is used, such as 50`",
        "use.air_C | -273.15 | `use.air_C: -273.15 given, allowed -20 to 90 °C; write degrees"
            + " Celsius; no film is forecast in harder frost or in steam`",
        "cook.water_lost_g | 500 | `cook.water_lost_g: 500 g of water lost in the pot given,"
            + " allowed less than the 370 g that went in; weigh the pot before and after the cook"
            + " and write the difference`",
        "pour.poured_g | 9000 | `pour.poured_g: a pour that makes 148 mm on this plate given,"
            + " allowed 0.05 to 50 mm; check poured_g and the plate's sides`",
        "pour.wet_thickness_mm | 9 | `pour.wet_thickness_mm: a wet thickness that does not fit the"
            + " grams poured given, allowed about 2.46 mm, which poured_g makes on this plate;"
            + " check wet_thickness_mm, poured_g and the plate's sides`",
        "pour.plates | 1.5 | `pour.plates: 1.5 given, allowed a whole number, 1 to 1000 plates;"
            + " write how many plates were poured`",
        "pour.plate.diameter_mm | 250 | `pour.plate.diameter_mm: a diameter"
            + " beside a length or width given, allowed diameter_mm for a round"
            + " plate, length_mm and width_mm for any other; delete one of them`",
        "room.rh_pct | 0.55 | `room.rh_pct: 0.55 given, allowed 0, or more than 1 up to 100 %; this"
            + " looks like a fraction; write 55 for 55 %`",
        "room.swing | `{\"coolest_C\": 16, \"warmest_C\": 6, \"driest_rh_pct\": 50,"
            + " \"dampest_rh_pct\": 85}` | `room.swing.coolest_C: coolest_C above warmest_C given,"
            + " allowed coolest_C at most warmest_C; exchange the two`",
        "room.log_csv | `5` | `room.log_csv: 5 given, allowed a text in double quotes, not empty;"
            + " write the name of the CSV file beside this one`",
        "room.log_csv | `\"../shed.csv\"` | `room.log_csv: \"../shed.csv\" given, allowed the name"
            + " of a file beside this one or in a folder below it; move the file there and write"
            + " its name with /`",
        "photos | `[\"/etc/hosts\"]` | `photos[1]: \"/etc/hosts\" given, allowed the name of a file"
            + " beside this one or in a folder below it; move the file there and write its name"
            + " with /`",
        "weighings.0.mass_g | 900 | `weighings[1].mass_g: a film of 300 g given, allowed at most"
            + " the 150 g that were poured; check the mass, the plate's tare_g, and whether"
            + " with_plate is right`",
        "weighings.0.mass_g | 590 | `weighings[1].mass_g: a film of -10 g"
            + " after the plate is subtracted given, allowed more than 0 g; check the"
            + " mass, the plate's tare_g, and whether with_plate is right`",
        "weighings.0.mass_g | 602 | `weighings[1].mass_g: a film of 2 g given,"
            + " allowed at least half of the 8.81 g that cannot evaporate; check the"
            + " mass, the plate's tare_g, and whether this was the same plate`",
        "weighings.0.at | `\"2026-04-02T08:00\"` | `weighings[1].at: a weighing 2 h before the pour"
            + " given, allowed the time of the pour or later; check this time and poured_at`",
        "weighings.0.at | `\"2036-04-02T08:00\"` | `weighings[1].at: a weighing 3650 days after the"
            + " pour given, allowed at most two years after it; check this time and poured_at`",
        "weighings.0.at | `\"2026-02-30T08:00\"` | `weighings[1].at: \"2026-02-30T08:00\" given,"
            + " allowed a day of the calendar; check day and month`",
        "weighings | `[{\"at\": \"+6h\", \"mass_g\": 730}, {\"at\":"
            + " \"2026-04-02T16:00\", \"mass_g\": 728}]` | `weighings[2].at: a second"
            + " weighing at the same time given, allowed one weighing at a time;"
            + " delete one, or correct its time`",
        "faults | `[{\"kind\": \"mold\"}]` | `faults[1].kind: \"mold\" given, allowed \"cracked\","
            + " \"broke apart\", \"curled\", \"shrank\", \"sticky\", \"brittle\", \"cloudy\","
            + " \"still wet\", \"bubbles\", \"lumps\", \"scorched\", \"mould\", \"stuck\","
            + " \"uneven\"; did you mean \"mould\"?`",
        "weighings | `[{\"at\": \"+6h\"}]` | `weighings[1]: no mass_g given, allowed more than 0,"
            + " up to 200000 g; add \"mass_g\": 730`",
        "weighings | `[{\"mass_g\": 730}]` | `weighings[1]: no at given, allowed a time; add"
            + " \"at\": \"2026-04-02T18:30\"`",
        "moved | `[{\"at\": \"+6h\", \"faces\": \"both\"}, {\"at\": \"2026-04-02T16:00\","
            + " \"faces\": \"turned\"}]` | `moved[2].at: a second move at the same time given,"
            + " allowed one move at a time; delete one, or correct its time`",
        "room.air_C | `{\"from\": 22, \"to\": 18}` | `room.air_C: 22 to 18 given, allowed a range,"
            + " the lower end first; turn its ends round`",
        "moved | `[{\"at\": \"+6h\"}]` | `moved[1]: no faces given, allowed upper, turned, both;"
            + " add \"faces\": \"both\"`",
        "room.swing | `{\"coolest_C\": 6, \"warmest_C\": 16, \"driest_rh_pct\": 50}` | `room.swing:"
            + " no dampest_rh_pct given, allowed 0, or more than 1 up to 100 %; add"
            + " \"dampest_rh_pct\": 85`",
        "rating | 7 | `rating: 7 given, allowed 1 to 5; write 1 for a failure to 5 for a film you"
            + " want again`",
      })
  void impossibleValue(String path, String json, String sentence) {
    assertThat(TrialText.faults(folder, TrialText.with(path, json)))
        .singleElement()
        .asString()
        .matches("a\\.json, line \\d+, column \\d+: .*")
        .endsWith(": " + sentence);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "recipe.glycerin | `{\"mass_g\": 6}` | recipe.glycerol |"
            + " `recipe.glycerin: the field glycerin given, allowed glycerol here;"
            + " did you mean glycerol? (Begin fields of your own with _.)`",
        "recipe.water.mass | 300 | recipe.water.mass_g | `recipe.water.mass:"
            + " the field mass given, allowed mass_g here; did you mean mass_g?"
            + " (Begin fields of your own with _.)`",
        "recipe.water.mass_kg | 0.3 | recipe.water.mass_g |"
            + " `recipe.water.mass_kg: the field mass_kg given, allowed mass_g here;"
            + " did you mean mass_g? (Begin fields of your own with _.)`",
        "room.humidity | 60 | room.rh_pct | `room.humidity: the field humidity"
            + " given, allowed rh_pct here; did you mean rh_pct? (Begin fields of"
            + " your own with _.)`",
        "pour.wet_thicknes_mm | 3 | pour.poured_g | `pour.wet_thicknes_mm: the"
            + " field wet_thicknes_mm given, allowed wet_thickness_mm here; did you"
            + " mean wet_thickness_mm? (Begin fields of your own with _.)`",
      })
  void misspeltFieldThatBearsOnTheForecast(
      String path, String json, String instead, String sentence) {
    String text = TrialText.with(path, json);
    String without = TrialText.without(text, instead);
    assertThat(TrialText.faults(folder, without)).singleElement().asString().endsWith(sentence);
  }

  @Test
  void misspeltFieldBesideTheRightOneIsOnlyNoticed() {
    Notebook notebook =
        TrialText.read(folder, TrialText.with("recipe.glycerin", "{\"mass_g\": 6}"));
    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.notices())
        .extracting(Notice::text)
        .containsExactly("an unknown field, not used; did you mean glycerol?");
  }

  @Test
  void fieldsOfOnesOwnAreLeftAlone() {
    Notebook notebook = TrialText.read(folder, TrialText.with("_weather", "\"rain\""));
    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.notices()).isEmpty();
  }

  @Test
  void fieldOfOnesOwnThatLooksLikeAnother() {
    String text = TrialText.without(TrialText.with("recipe._glycerin", "5"), "recipe.glycerol");
    assertThat(TrialText.faults(folder, text)).isEmpty();
  }

  @Test
  void notANumber() {
    String text = TrialText.SOUND.replace("\"mass_g\": 360", "\"mass_g\": NaN");
    assertThat(TrialText.faults(folder, text))
        .containsExactly(
            "a.json, line 8, column 25: recipe.water.mass_g: NaN given, allowed 0 to 100000 g;"
                + " write the grams weighed");
  }

  @Test
  void numberBeyondAllNumbers() {
    String text = TrialText.SOUND.replace("\"mass_g\": 360", "\"mass_g\": 1e999");
    assertThat(TrialText.faults(folder, text))
        .containsExactly(
            "a.json, line 8, column 25: recipe.water.mass_g: 1e999 given, allowed 0 to 100000 g;"
                + " write the grams weighed");
  }

  @Test
  void theSameFieldTwice() {
    String text = TrialText.SOUND.replace("\"name\": \"A\",", "\"name\": \"A\", \"name\": \"B\",");
    assertThat(TrialText.faults(folder, text))
        .containsExactly(
            "a.json, line 2, column 16: name: the same field twice given, allowed"
                + " every field once; delete one of the two");
  }

  @Test
  void allFaultsOfAFileAreListedInTheirOrder() {
    String text =
        TrialText.SOUND
            .replace("\"mass_g\": 6.0", "\"mass_g\": -6")
            .replace("\"rh_pct\": 50, \"air_speed", "\"rh_pct\": 0.5, \"air_speed")
            .replace("\"thickness_mm\": 4", "\"thickness_mm\": \"4 kg\"")
            .replace("\"at\": \"+6h\"", "\"at\": \"soon\"");
    assertThat(TrialText.faults(folder, text))
        .containsExactly(
            "a.json, line 6, column 28: recipe.glycerol.mass_g: -6 given, allowed 0 to 100000 g;"
                + " write the grams weighed",
            "a.json, line 14, column 23: pour.plate.thickness_mm: \"4 kg\" given, allowed a number"
                + " from 0.05 to 100 mm; kg is a unit of mass; write a length",
            "a.json, line 21, column 54: room.rh_pct: 0.5 given, allowed 0, or more than 1 up to"
                + " 100 %; this looks like a fraction; write 50 for 50 %",
            "a.json, line 23, column 24: weighings[1].at: \"soon\" given, allowed a time such as"
                + " +6h or 2026-04-02T18:30; write it like one of these");
  }

  @Test
  void weighingByTheClockNeedsThePour() {
    String text =
        TrialText.without(TrialText.with("weighings.0.at", "\"2026-04-02T16:00\""), "poured_at");
    assertThat(TrialText.faults(folder, text))
        .singleElement()
        .asString()
        .endsWith(
            "weighings[1].at: a weighing by the clock in a trial without poured_at given, allowed a"
                + " time counted from the pour, such as \"+6h\"; add poured_at, or count from the"
                + " pour");
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed() throws java.io.IOException {
    Path outside = Files.createTempFile("outside", ".csv");
    try {
      Files.writeString(outside, "time,air_C,rh_pct\n", StandardCharsets.UTF_8);
      Files.createSymbolicLink(folder.resolve("log.csv"), outside);
      assertThat(TrialText.faults(folder, TrialText.with("room.log_csv", "\"log.csv\"")))
          .singleElement()
          .asString()
          .contains("the name of a file beside this one or in a folder below it");
    } finally {
      Files.delete(outside);
    }
  }

  @Test
  void aLinkToAFolderElsewhereIsNotFollowedToAFileThatIsNotThereYet() throws java.io.IOException {
    Path elsewhere = Files.createTempDirectory("elsewhere");
    try {
      Files.createSymbolicLink(folder.resolve("logs"), elsewhere);
      assertThat(TrialText.faults(folder, TrialText.with("room.log_csv", "\"logs/log.csv\"")))
          .singleElement()
          .asString()
          .contains("the name of a file beside this one or in a folder below it");
    } finally {
      Files.delete(elsewhere);
    }
  }

  @Test
  void roomAtFullHumidityIsARoom() {
    assertThat(TrialText.faults(folder, TrialText.with("room.rh_pct", "100"))).isEmpty();
  }

  @Test
  void missingPictureIsNoticed() {
    Notebook notebook = TrialText.read(folder, TrialText.with("photos", "[\"plate.jpg\"]"));
    assertThat(notebook.trials()).hasSize(1);
    assertThat(notebook.notices())
        .extracting(Notice::text)
        .containsExactly("there is no picture of this name; the page goes without it");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "pour.plate | `{\"length_mm\": 250}` | `pour.plate.length_mm: not used, since width_mm is"
            + " missing`",
        "pour.plate | `{\"diameter_mm\": 240, \"shape\": \"oval\"}` | `pour.plate.shape: not used,"
            + " since it is for a plate with length_mm and width_mm`",
        "pulls | `{\"load_N\": 12, \"load_kg\": 3, \"width_mm\": 10, \"thickness_um\": 100}` |"
            + " `pulls.load_kg: not used, since load_N is given`",
      })
  void whatIsNotUsedIsNamed(String path, String json, String sentence) {
    String text = TrialText.without(TrialText.with(path, json), "weighings");
    Notebook notebook = TrialText.read(folder, text);

    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.notices()).extracting(Notice::sentence).anyMatch(s -> s.contains(sentence));
  }
}
