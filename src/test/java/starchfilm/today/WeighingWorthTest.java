package starchfilm.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Workshops;
import starchfilm.numerics.evidence.Band;

/** What is promised of a weighing is held against what it does once it is noted. */
class WeighingWorthTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"8, 2.5, 50", "20, 2.5, 50", "30, 3.5, 55", "20, 2, 35"})
  void aWeighingNarrowsTheRangeAsPromised(int afterH, double wetMm, int rh) throws IOException {
    Standing before = standing(afterH, wetMm, rh, "");
    double grams = 600 + 1e3 * before.scale().nowKg().middle();
    Standing after =
        standing(
            afterH,
            wetMm,
            rh,
            ", \"weighings\": [{\"at\": \"+"
                + afterH
                + "h\", \"mass_g\": "
                + String.format(java.util.Locale.ROOT, "%.0f", grams)
                + "}]");

    assertThat(logWidth(after.readyS()) / logWidth(before.readyS()))
        .isCloseTo(before.scale().rangeLeft(), within(0.12));
  }

  /** In the hours around dry-through the range of what is lost reaches beyond what there is. */
  @ParameterizedTest
  @ValueSource(ints = {18, 24, 30, 36, 48, 72})
  void theRangeOfTheFilmEndsWhereItsSolidsDo(int afterH) throws IOException {
    Standing standing = standing(afterH, 1.7, 53, "");
    double solidsKg = standing.forecast().drySolidsKgPerPlate();
    // The thickness is known to 8 %, of which 1.28 standard deviations are 10 %.
    assertThat(standing.scale().nowKg().low()).isGreaterThan(0.85 * solidsKg);
  }

  private static double logWidth(Band band) {
    return Math.log(band.high() / band.low());
  }

  private Standing standing(int afterH, double wetMm, int rh, String more) throws IOException {
    Path file = folder.resolve("plate.json");
    Files.writeString(
        file,
        """
        {"poured_at": "2026-04-19T10:00",
         "recipe": {"starch": {"kind": "potato", "mass_g": 20.0},
                    "glycerol": {"mass_g": 6, "purity_pct": 99}, "water": {"mass_g": 360}},
         "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 25},
         "pour": {"plate": {"material": "glass", "length_mm": 300, "width_mm": 200,
                            "tare_g": 600}, "wet_thickness_mm": %s},
         "room": {"name": "kitchen", "air_C": 21, "rh_pct": %d, "air_speed_m_per_s": 0.1}%s}
        """
            .formatted(wetMm, rh, more));
    List<Trial> trials = NotebookReader.read(List.of(file)).trials();
    LocalDateTime now = LocalDateTime.of(2026, 4, 19, 10, 0).plusHours(afterH);
    Workshops workshops =
        new Workshops(Clock.fixed(Instant.parse("2026-04-29T12:00:00Z"), ZoneOffset.UTC));
    TrialForecaster forecaster = new TrialForecaster(workshops);
    return Today.of(trials, now, trial -> Optional.of(forecaster.forecast(trial)), ScaleCourse::of)
        .standings()
        .get(0);
  }
}
