package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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
      for (int i = 0; i < 40; i++) {
        double secant = (more[i] - less[i]) / factor.spread();
        assertThat(slopes[i][factor.ordinal()]).isCloseTo(secant, within(0.1 * Math.abs(secant)));
      }
    }
  }

  /** The last four cases are known without a simulation, the least lately asked for given up. */
  @Test
  void aCaseAskedForAgainIsNotSolvedAgain() {
    AtomicInteger solved = new AtomicInteger();
    PlateReadings readings = readings(solved, new Weighing(7200, 0.1, 0.001));
    double[][] cases = new double[5][];
    for (int i = 0; i < 5; i++) {
      cases[i] = aside(UncertainParameter.AIR_SIDE, 0.1 * i);
      readings.expectedKg(cases[i]);
    }
    assertThat(solved).hasValue(5);
    for (int i = 4; i > 0; i--) {
      readings.expectedKg(cases[i].clone());
    }
    assertThat(solved).hasValue(5);
    assertThat(readings.expectedKg(cases[0])[0]).isNotEqualTo(readings.expectedKg(cases[1])[0]);
    assertThat(solved).hasValue(6);
  }

  /** Slopes cost one simulation more than there are factors, and serve three tenths of a spread. */
  @ParameterizedTest
  @EnumSource(names = {"AIR_SIDE", "HUMIDITY", "THICKNESS"})
  void slopesServeForThreeTenthsOfASpread(UncertainParameter factor) {
    AtomicInteger solved = new AtomicInteger();
    PlateReadings readings = readings(solved, new Weighing(7200, 0.1, 0.001));
    double[][] slopes = readings.slopes(MIDDLE);
    assertThat(solved).hasValue(1 + VarianceShares.COUNT);
    assertThat(readings.slopes(aside(factor, 0.299))).isEqualTo(slopes);
    assertThat(readings.slopes(aside(factor, -0.299))).isEqualTo(slopes);
    assertThat(solved).hasValue(1 + VarianceShares.COUNT);
    assertThat(readings.slopes(aside(factor, -0.301))).isNotEqualTo(slopes);
    assertThat(solved).hasValue(2 * (1 + VarianceShares.COUNT));
  }

  /** Of readings that share an unknown tare only what departs from their weighted mean slopes. */
  @Test
  void anUnknownTareIsTakenOffTheSlopesToo() {
    PlateReadings readings =
        new PlateReadings(
            Castings.USUAL,
            List.of(
                new Weighing(3600, 0.110, 0.001, false, false),
                new Weighing(7200, 0.105, 0.002, false, true),
                new Weighing(10_800, 0.100, 0.001, false, false),
                new Weighing(14_400, 0.050, 0.001, false, true),
                new Weighing(18_000, 0.050, 0.003, false, true)),
            12_000,
            false,
            () -> {});
    RealVector weights = new ArrayRealVector(new double[] {1, 1, 0.5, 0.7, 1});
    double[][] slopes = readings.slopes(MIDDLE);
    for (int factor = 0; factor < VarianceShares.COUNT; factor++) {
      double[] column = MatrixUtils.createRealMatrix(slopes).getColumn(factor);
      double[] centred = readings.centred(column, weights);
      assertThat(centred[1]).isEqualTo(column[1]);
      for (int[] level : new int[][] {{0, 2}, {3, 4}}) {
        double sum = 0;
        for (int i : level) {
          sum += weights.getEntry(i) / Math.pow(readings.get(i).sdKg(), 2) * centred[i];
        }
        assertThat(sum).as("%s", factor).isCloseTo(0, within(1e-6));
        assertThat(centred[level[1]] - centred[level[0]])
            .isCloseTo(column[level[1]] - column[level[0]], within(1e-12));
      }
    }
  }

  /** The scale's error and the model's own, in squares; trusted only where that is asked for. */
  @Test
  void aReadingsErrorIsThatOfScaleAndModel() {
    Weighing confirmed = new Weighing(7200, 0.1, 0.003, true, true);
    PlateReadings readings = readings(new AtomicInteger(), confirmed);
    assertThat(readings.get(0).sdKg())
        .isCloseTo(Math.hypot(0.003, ModelMiss.of(Castings.USUAL).sdKg(0.1)), within(1e-12));
    assertThat(readings.get(0).trusted()).isFalse();
  }

  private static PlateReadings readings(AtomicInteger solved, Weighing... weighings) {
    return new PlateReadings(Castings.USUAL, List.of(weighings), solved::incrementAndGet);
  }

  private static double[] aside(UncertainParameter factor, double spreads) {
    double[] aside = MIDDLE.clone();
    aside[factor.ordinal()] = spreads * factor.spread();
    return aside;
  }

  private static double[] moved(PlateReadings readings, UncertainParameter factor, double by) {
    return readings.expectedKg(aside(factor, by / factor.spread()));
  }
}
