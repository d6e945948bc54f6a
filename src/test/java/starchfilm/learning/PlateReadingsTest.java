package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.UncertainParameter;

/** What a scale should show, and how that moves with what is uncertain. */
class PlateReadingsTest {
  private static final double[] MIDDLE = new double[VarianceShares.COUNT];

  private static PlateReadings weighedEveryHalfHour(Casting plate) {
    List<Weighing> weighings =
        IntStream.rangeClosed(1, 60)
            .mapToObj(i -> new Weighing(i * 1800.0, 0.05, 0.0005, false, true))
            .toList();
    return new PlateReadings(plate, weighings, () -> {});
  }

  /** A film on a rack touches no bench: not the last digit of its mass may hang on the bench. */
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 1, 1.5, 2, 3, 5})
  void whatHasNoEffectHasNoSlope(double wetMm) {
    Casting racked =
        Castings.plate(wetMm, Castings.paste(0.06, 0.2), Castings.room(22, 45, 0.3), 60)
            .with(List.of(new FaceChange(0, OpenFaces.BOTH)));
    for (double[] byFactor : weighedEveryHalfHour(racked).slopes(MIDDLE)) {
      assertThat(byFactor[UncertainParameter.BENCH.ordinal()]).isZero();
    }
  }

  /** Between half a spread less and half a spread more lies one spread. */
  @Test
  void slopesSayWhatAWholeSpreadDoes() {
    PlateReadings readings = weighedEveryHalfHour(Castings.USUAL);
    double[][] slopes = readings.slopes(MIDDLE);
    for (UncertainParameter factor :
        List.of(UncertainParameter.AIR_SIDE, UncertainParameter.THICKNESS)) {
      double[] less = moved(readings, factor, -0.5 * factor.spread());
      double[] more = moved(readings, factor, 0.5 * factor.spread());
      for (int i = 5; i < 40; i++) {
        double secant = (more[i] - less[i]) / factor.spread();
        assertThat(slopes[i][factor.ordinal()]).isCloseTo(secant, within(0.1 * Math.abs(secant)));
      }
    }
  }

  private static double[] moved(PlateReadings readings, UncertainParameter factor, double by) {
    double[] moved = MIDDLE.clone();
    moved[factor.ordinal()] = by;
    return readings.expectedKg(moved);
  }
}
