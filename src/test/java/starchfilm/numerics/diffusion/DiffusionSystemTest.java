package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The linearised rates against central differences of the rates themselves. */
class DiffusionSystemTest {
  private static final Grid GRID = Grid.fineAtBothFaces(9, 5);
  private static final int LENGTH = GRID.nodes() + 2;
  private static final double TIME = 1.3;

  static Stream<BorderedSystem> systems() {
    return Stream.of(
        DryingLikeFilm.inASteadyRoom().system(GRID),
        DryingLikeFilm.inASwingingRoom().system(GRID),
        new ManufacturedDiffusion().system(GRID));
  }

  @ParameterizedTest
  @MethodSource("systems")
  void everyEntryOfTheJacobianIsADerivativeOfTheRates(BorderedSystem system) {
    double[] state = unevenState();
    BorderedTridiagonal jacobian = new BorderedTridiagonal(GRID.nodes());
    linearise(system, TIME, state, jacobian, new double[LENGTH]);
    double[][] entries = DenseMatrix.of(jacobian);

    for (int row = 0; row < LENGTH; row++) {
      for (int column = 0; column < LENGTH; column++) {
        double slope = slope(rate(system, row, state, column), state[column]);
        assertThat(entries[row][column]).isCloseTo(slope, within(1e-7 * scale(entries[row])));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("systems")
  void theTimeSlopeIsTheDerivativeOfTheRatesByTimeAlone(BorderedSystem system) {
    double[] state = unevenState();
    double[] timeSlope = new double[LENGTH];
    linearise(system, TIME, state, new BorderedTridiagonal(GRID.nodes()), timeSlope);

    for (int row = 0; row < LENGTH; row++) {
      int of = row;
      double slope = slope(time -> rates(system, time, state)[of], TIME);
      assertThat(timeSlope[row]).isCloseTo(slope, within(1e-7 * (1 + scale(timeSlope))));
    }
  }

  @ParameterizedTest
  @MethodSource("systems")
  void leavesNoTraceOfEarlierCalls(BorderedSystem system) {
    double[] state = unevenState();
    BorderedTridiagonal fresh = new BorderedTridiagonal(GRID.nodes());
    linearise(system, TIME, state, fresh, new double[LENGTH]);
    BorderedTridiagonal used = new BorderedTridiagonal(GRID.nodes());
    double[] timeSlope = new double[LENGTH];
    linearise(system, 9, DryingLikeFilm.inASteadyRoom().start(GRID), used, timeSlope);

    linearise(system, TIME, state, used, timeSlope);

    assertThat(DenseMatrix.of(used)).isDeepEqualTo(DenseMatrix.of(fresh));
  }

  private static void linearise(
      BorderedSystem system,
      double time,
      double[] state,
      BorderedTridiagonal jacobian,
      double[] timeSlope) {
    system.rates(time, state, new double[LENGTH]);
    system.linearise(time, state, jacobian, timeSlope);
  }

  @Test
  void averagesOverTheInterval() {
    DiffusionSystem system = DryingLikeFilm.inASteadyRoom().system(GRID);
    double[] state = new double[LENGTH];
    System.arraycopy(GRID.positions(), 0, state, 0, GRID.nodes());

    assertThat(system.mean(state)).isCloseTo(0.5, within(1e-15));
  }

  @Test
  void refusesALengthOrFactorOfNothing() {
    DiffusionSystem system = DryingLikeFilm.inASteadyRoom().system(GRID);

    assertThat(
            assertThrows(IllegalArgumentException.class, () -> system.setSize(0, 1)).getMessage())
        .isEqualTo("length and factor must be above 0, not 0.0 and 1.0");
    assertThrows(IllegalArgumentException.class, () -> system.setSize(1, Double.NaN));
  }

  private static UnivariateFunction rate(
      BorderedSystem system, int row, double[] state, int column) {
    return value -> {
      double[] moved = state.clone();
      moved[column] = value;
      return rates(system, TIME, moved)[row];
    };
  }

  private static double[] rates(BorderedSystem system, double time, double[] state) {
    double[] rates = new double[LENGTH];
    system.rates(time, state, rates);
    return rates;
  }

  /** Central differences at two widths, extrapolated (Richardson). */
  private static double slope(UnivariateFunction function, double at) {
    double width = 1e-4;
    double narrow = (function.value(at + width) - function.value(at - width)) / (2 * width);
    double wide = (function.value(at + 2 * width) - function.value(at - 2 * width)) / (4 * width);
    return narrow + (narrow - wide) / 3;
  }

  private static double scale(double[] row) {
    double largest = 0;
    for (double entry : row) {
      largest = Math.max(largest, Math.abs(entry));
    }
    return largest;
  }

  private static double[] unevenState() {
    double[] state = new Random(7).doubles(LENGTH, 0.3, 2).toArray();
    state[GRID.nodes()] = 0.17;
    return state;
  }
}
