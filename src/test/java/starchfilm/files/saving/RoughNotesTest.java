package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.Use;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.TrialText;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;

/** What people note roughly, and what becomes of it. */
class RoughNotesTest {
  private static final double ROUNDING = 1e-12;

  @TempDir private Path folder;

  @Test
  void everythingNotedInFullLeavesNothingNotRecorded() {
    Trial trial = only(TrialText.SOUND);
    assertThat(trial.notRecorded()).isEmpty();
    assertThat(trial.pouredAt()).contains(LocalDateTime.of(2026, 4, 2, 10, 0));
    assertThat(trial.casting().plate().material()).isEqualTo(PlateMaterial.GLASS);
    assertThat(trial.casting().plate().areaM2()).isCloseTo(0.06, within(ROUNDING));
    assertThat(trial.casting().pour().plates()).isEqualTo(2);
    assertThat(trial.casting().pour().unevenness()).isEqualTo(0.15);
    assertThat(trial.casting().pour().pasteTemperatureK()).isEqualTo(333.15);
    assertThat(((ConstantRoom) trial.casting().room()).air().relativeHumidity()).isEqualTo(0.5);
    assertThat(trial.casting().place().uncertainty()).isEqualTo(RoomUncertainty.NONE);
    assertThat(trial.casting().use()).isEqualTo(new Use(0.5, 293.15, 7 * 86_400));
  }

  @Test
  void aWeighedAmountIsAsSureAsItsLastDigit() {
    // JCGM 100:2008, F.2.2.1: a reading of step d has the standard uncertainty d/sqrt(12).
    Trial trial = only(TrialText.SOUND);
    assertThat(trial.recipe().waterKg().sd()).isCloseTo(0.001 / Math.sqrt(12), within(ROUNDING));
    assertThat(trial.recipe().glycerol().massKg().sd())
        .isCloseTo(0.0001 / Math.sqrt(12), within(ROUNDING));
  }

  @Test
  void theScalesStepCountsForMoreThanTheDigits() {
    Trial trial = only(TrialText.with("scale_g", "2"));
    assertThat(trial.recipe().glycerol().massKg().sd())
        .isCloseTo(0.002 / Math.sqrt(12), within(ROUNDING));
  }

  @Test
  void aRangeIsARectangle() {
    // JCGM 100:2008, 4.3.7: a rectangle of width w has the standard uncertainty w/sqrt(12).
    Trial trial = only(TrialText.with("recipe.glycerol.mass_g", "{\"from\": 5, \"to\": 7}"));
    Estimate mass = trial.recipe().glycerol().massKg();
    assertThat(mass.value()).isCloseTo(0.006, within(ROUNDING));
    assertThat(mass.sd()).isCloseTo(0.002 / Math.sqrt(12), within(ROUNDING));
  }

  @Test
  void aRangeWidensTheDoubtOfThePaste() {
    Paste sure = Paste.cooked(only(TrialText.SOUND).recipe());
    Paste rough =
        Paste.cooked(
            only(TrialText.with("recipe.glycerol.mass_g", "{\"from\": 4, \"to\": 8}")).recipe());
    assertThat(rough.plasticiserRelativeSd()).isGreaterThan(5 * sure.plasticiserRelativeSd());
  }

  @Test
  void anUnknownAmountIsAssumedWidelyAndListed() {
    Trial trial = only(TrialText.with("recipe.glycerol.mass_g", "\"unknown\""));
    assertThat(trial.notRecorded())
        .containsExactly(
            new NotRecorded(
                "recipe.glycerol.mass_g",
                "glycerol",
                "3 to 10 g, 15 to 50 g per 100 g of starch",
                "the film may turn out brittle or sticky; weigh the glycerol first"));
    assertThat(trial.recipe().glycerol().massKg().value()).isCloseTo(0.0065, within(ROUNDING));
  }

  @Test
  void starchAndWaterStandInForEachOther() {
    Trial noWater = only(TrialText.with("recipe.water", ""));
    double starch = 0.0165;
    // Potato is usually cast at 2 to 4 % (StarchKind): 24 to 49 times as much water.
    assertThat(noWater.recipe().waterKg().value()).isCloseTo(starch * (49 + 24) / 2, within(1e-9));
    Trial noStarch = only(TrialText.with("recipe.starch.0.mass_g", ""));
    assertThat(noStarch.recipe().starches().get(0).massKg().value())
        .isCloseTo(0.360 * (1 / 49.0 + 1 / 24.0) / 2 / 0.825, within(1e-9));
  }

  @Test
  void whatIsAssumedIsNamedInWordsAndNumberedFromTheSecondOn() {
    Trial bare =
        only(
            "{\"recipe\": {\"starch\": [{\"kind\": \"corn\"}, {\"kind\": \"potato\"}],"
                + " \"glycerol\": {\"mass_g\": 4}, \"vinegar\": {\"mass_g\": 4}},"
                + " \"pour\": {\"plate\": {\"diameter_mm\": 240}},"
                + " \"weighings\": [{\"at\": \"+6h\", \"mass_g\": \"unknown\"}]}");
    List<String> words = bare.notRecorded().stream().map(NotRecorded::words).toList();
    assertThat(words)
        .anyMatch(line -> line.startsWith("moisture of the powder as "))
        .anyMatch(line -> line.startsWith("moisture of the powder 2 as "))
        .contains("weighing 1 as left out")
        .allMatch(line -> line.matches("[a-z0-9 ]+ as .+"))
        .noneMatch(line -> line.contains("_"));
  }

  @Test
  void aRecipeOfNothingButStarchIsEnough() {
    Trial trial = only("{\"recipe\": {\"starch\": [{\"kind\": \"corn\"}]}}");
    assertThat(trial.name()).isEqualTo("a");
    assertThat(trial.hasHistory()).isFalse();
    assertThat(trial.recipe().starches().get(0).kind()).isEqualTo(StarchKind.CORN);
    assertThat(trial.notRecorded())
        .extracting(NotRecorded::field)
        .containsExactly(
            "recipe.starch[1].moisture_pct",
            "recipe.starch[1].mass_g",
            "recipe.water",
            "recipe.glycerol",
            "cook.minutes",
            "cook.top_C",
            "cook.water_lost_g",
            "pour.plate.length_mm",
            "pour.plate.material",
            "pour.plate.thickness_mm",
            "pour.wet_thickness_mm",
            "pour.unevenness_pct",
            "pour.paste_C",
            "room.air_speed_m_per_s",
            "room.air_C",
            "room.rh_pct",
            "use.rh_pct");
    assertThat(Paste.cooked(trial.recipe()).composition().dryStarch()).isBetween(0.03, 0.08);
  }

  @Test
  void pouredMassAndAreaStandForWetThickness() {
    Trial trial = only(TrialText.SOUND);
    double density = Paste.cooked(trial.recipe()).composition().pasteDensityKgPerM3();
    assertThat(trial.casting().pour().wetThicknessM().value())
        .isCloseTo(0.150 / density / 0.06, within(ROUNDING));
    assertThat(trial.casting().pour().weighedKg()).isPresent();
  }

  @Test
  void wetThicknessAloneIsTaken() {
    String text = TrialText.without(TrialText.with("pour.wet_thickness_mm", "3"), "pour.poured_g");
    Trial trial = only(text);
    assertThat(trial.casting().pour().wetThicknessM()).isEqualTo(Estimate.exact(0.003));
    assertThat(trial.casting().pour().weighedKg()).isEmpty();
  }

  @Test
  void withoutEitherAllOfThePasteIsOnThePlates() {
    Trial trial = only(TrialText.without(TrialText.SOUND, "pour.poured_g"));
    Paste paste = Paste.cooked(trial.recipe());
    double whole = paste.massKg() / paste.composition().pasteDensityKgPerM3() / 2 / 0.06;
    assertThat(trial.casting().pour().wetThicknessM().value())
        .isCloseTo(0.875 * whole, within(1e-9));
  }

  @Test
  void aRoundPlateHasItsArea() {
    String text =
        TrialText.without(
            TrialText.without(
                TrialText.with("pour.plate.diameter_mm", "200"), "pour.plate.width_mm"),
            "pour.plate.length_mm");
    assertThat(only(text).casting().plate().areaM2()).isCloseTo(Math.PI * 0.01, within(1e-9));
  }

  @Test
  void millilitresBecomeGramsByTheDensity() {
    Trial water = only(TrialText.with("recipe.water", "{\"volume_ml\": 360}"));
    // 997 to 998 g a litre at 20 to 25 C: IAPWS.
    assertThat(water.recipe().waterKg().value()).isCloseTo(0.359, within(0.001));
    Trial glycerol =
        only(TrialText.with("recipe.glycerol", "{\"volume_ml\": 10, \"purity_pct\": 100}"));
    // 1.261 g/ml at 20 C: Bosart and Snoddy 1927.
    assertThat(glycerol.recipe().glycerol().massKg().value()).isCloseTo(0.01261, within(1e-5));
  }

  @Test
  void aSpoonedStarchIsToldOnceAndItsMassIsARange() {
    for (String mass :
        List.of("\"mass_g\": \"3 tbsp\"", "\"mass_g\": \"unknown\", \"volume_ml\": \"3 tbsp\"")) {
      Notebook read =
          TrialText.read(
              folder, TrialText.with("recipe.starch", "{\"kind\": \"potato\", " + mass + "}"));
      assertThat(read.notices())
          .extracting(Notice::text)
          .filteredOn(text -> text.contains("tbsp"))
          .hasSize(1);
      assertThat(read.trials().get(0).notRecorded())
          .filteredOn(gap -> gap.field().equals("recipe.starch.mass_g"))
          .extracting(NotRecorded::assumed)
          .singleElement()
          .asString()
          .contains("by its volume");
    }
  }

  @Test
  void aRoughRoomIsDoubted() {
    Trial trial = only(TrialText.with("room.rh_pct", "{\"from\": 40, \"to\": 60}"));
    assertThat(((ConstantRoom) trial.casting().room()).air().relativeHumidity()).isEqualTo(0.5);
    assertThat(trial.casting().place().uncertainty().humiditySd())
        .isCloseTo(0.2 / Math.sqrt(12), within(ROUNDING));
  }

  @Test
  void aSwingingRoomIsWarmestWhenItSays() {
    Trial trial =
        only(
            TrialText.with(
                "room.swing",
                "{\"coolest_C\": 6, \"warmest_C\": 16, \"driest_rh_pct\": 50,"
                    + " \"dampest_rh_pct\": 80, \"warmest_at\": \"15:00\"}"));
    SwingingRoom room = (SwingingRoom) trial.casting().room();
    // Poured at 10:00, so five hours on.
    assertThat(room.at(5 * 3600).temperatureK()).isCloseTo(289.15, within(1e-9));
    assertThat(room.at(5 * 3600).relativeHumidity()).isCloseTo(0.5, within(1e-9));
    assertThat(room.at(17 * 3600).temperatureK()).isCloseTo(279.15, within(1e-9));
  }

  @Test
  void weighingsComeInOrderWithoutThePlate() {
    Trial trial =
        only(
            TrialText.with(
                "weighings",
                "[{\"at\": \"2026-04-03T10:00\", \"mass_g\": 680},"
                    + " {\"at\": \"+6h\", \"mass_g\": 130, \"with_plate\": false}]"));
    assertThat(trial.seen().weighings())
        .extracting(Weighing::timeS)
        .containsExactly(21_600.0, 86_400.0);
    assertThat(trial.seen().weighings())
        .extracting(w -> Math.round(w.filmMassKg() * 1e6))
        .containsExactly(130_000L, 80_000L);
    // Two readings of 1 g steps: plate with film, and plate.
    assertThat(trial.seen().weighings().get(1).massSdKg())
        .isCloseTo(0.001 * Math.sqrt(2.0 / 12), within(1e-9));
  }

  @Test
  void weighingsWithThePlateNeedItsTare() {
    Trial trial =
        only(
            TrialText.without(
                TrialText.with(
                    "weighings", "[{\"at\": \"+6h\", \"mass_g\": 730, \"with_plate\": true}]"),
                "pour.plate.tare_g"));
    assertThat(trial.seen().weighings()).isEmpty();
    assertThat(trial.notRecorded())
        .containsExactly(
            new NotRecorded(
                "pour.plate.tare_g",
                "weight of the empty plate",
                "unknown: one weighing with the plate does not count yet",
                "they show more if the empty plate was weighed too"));
  }

  @Test
  void aHangingMassIsALoad() {
    Trial trial =
        only(
            TrialText.with("pulls", "[{\"load_kg\": 1, \"width_mm\": 10, \"thickness_um\": 100}]"));
    // Standard gravity, 3rd CGPM 1901.
    assertThat(trial.seen().pulls())
        .containsExactly(new PullTest(9.80665, 0.01, 100 * 1e-6, java.util.OptionalDouble.empty()));
  }

  @Test
  void readingTwiceGivesTheSame() {
    assertThat(NotebookReader.read(List.of(Path.of("formulations"))))
        .isEqualTo(NotebookReader.read(List.of(Path.of("formulations"))));
  }

  private Trial only(String text) {
    Notebook notebook = TrialText.read(folder, text);
    assertThat(TrialText.sentences(folder, notebook)).isEmpty();
    return notebook.trials().get(0);
  }
}
