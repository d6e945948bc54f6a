package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.numerics.diffusion.FluxPotential.PotentialReader;

/** The tabulated transform against the integral it stands for, by a library's quadrature. */
class FluxPotentialTest {
  private static final double LARGEST = 9;
  private static final double HALF = 1;
  private static final int INTERVALS = 200;

  /** Rises two-thousandfold from a dry film to its peak and falls tenfold to a wet one. */
  private static double coefficient(double u, double s) {
    return 1e-9 * Math.exp(-6 / (u + 0.6) + (1.5 - 0.1 * u) * s) / ((1 + u) * (1 + u));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.3, 0, 0.21, 0.5})
  void isTheIntegralOfTheCoefficient(double border) {
    ReadTable place = threeLayers(INTERVALS, border);
    double largest = integral(LARGEST, border);

    for (double u : new double[] {0.003, 0.05, 0.1, 0.35, 1, 2.7, 5, 8.9}) {
      double exact = integral(u, border);
      assertThat(place.potential(u)).isCloseTo(exact, within(1e-7 * exact + 1e-9 * largest));
    }
  }

  @Test
  void isNothingAtNothing() {
    assertThat(threeLayers(INTERVALS, 0.2).potential(0)).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 0.003, 0.05, 0.1, 0.35, 1, 2.7, 5, 8.9, 10})
  void theCoefficientIsTheSlopeOfThePotential(double u) {
    ReadTable place = threeLayers(INTERVALS, 0.2);

    double slope = slope(place::potential, u, 1e-4 * (0.1 + Math.abs(u)));

    assertThat(place.coefficient(u) / slope).isCloseTo(1, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.003, 0.05, 0.1, 0.35, 1, 2.7, 5, 8.9, 9})
  void theCoefficientIsTheTabulatedOne(double u) {
    ReadTable place = threeLayers(INTERVALS, 0.2);

    assertThat(place.coefficient(u) / interpolated(u, 0.2)).isCloseTo(1, within(2e-5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-2, -0.01, 0, 0.05, 0.35, 1, 5, 9.5})
  void theBorderSlopeIsTheChangeWithTheLumpedState(double u) {
    double slope = slope(border -> threeLayers(INTERVALS, border).potential(u), 0.2, 1e-3);

    assertThat(threeLayers(INTERVALS, 0.2).borderSlope(u))
        .isCloseTo(slope, within(1e-9 * Math.abs(slope)));
  }

  /** A stage of the integrator may overstep a little; it must meet no jump in value or slope. */
  @ParameterizedTest
  @ValueSource(doubles = {0, LARGEST})
  void goesOnSmoothlyPastTheEndsOfTheTable(double end) {
    ReadTable place = threeLayers(INTERVALS, 0.2);
    double tiny = 1e-9;

    double rise = place.potential(end + tiny) - place.potential(end - tiny);

    assertThat(rise / (2 * tiny * place.coefficient(end))).isCloseTo(1, within(1e-5));
    assertThat(place.coefficient(end + tiny) / place.coefficient(end - tiny))
        .isCloseTo(1, within(1e-5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {9.1, 10, 12})
  void staysNearTheCoefficientAboveTheTable(double u) {
    ReadTable place = threeLayers(INTERVALS, 0.2);

    assertThat(place.coefficient(u) / interpolated(u, 0.2)).isCloseTo(1, within(0.05));
  }

  /** The place {@code -c} is a pole of the table's own variable. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.01, -0.5, -HALF, -1.5, -100})
  void keepsTheCoefficientOfNothingBelowNothing(double u) {
    ReadTable place = threeLayers(INTERVALS, 0.2);
    double atZero = interpolated(0, 0.2);

    assertThat(place.coefficient(u) / atZero).isCloseTo(1, within(1e-14));
    assertThat(place.potential(u) / (atZero * u)).isCloseTo(1, within(1e-14));
  }

  @Test
  void passesOnWhatIsNotANumber() {
    ReadTable place = threeLayers(INTERVALS, 0.2);

    assertThat(place.potential(Double.NaN)).isNaN();
    assertThat(place.coefficient(Double.NaN)).isNaN();
  }

  @Test
  void errorFallsWithTheFourthPowerOfTheInterval() {
    double coarse = largestError(80);
    double middle = largestError(160);
    double fine = largestError(320);

    assertThat(ObservedOrder.of(coarse, middle)).isBetween(3.8, 4.2);
    assertThat(ObservedOrder.of(middle, fine)).isBetween(3.9, 4.1);
  }

  /** Nine orders of magnitude over the table, a factor of 30 an interval at most. */
  @Test
  void staysPositiveWhereTheCoefficientChangesThirtyfoldAnInterval() {
    int intervals = 10;
    double perRatio = Math.log(30) * intervals / (LARGEST / (LARGEST + HALF));
    FluxCoefficient steep =
        (u, k) -> {
          double rest = HALF / (u + HALF);
          k[0] = 1e-9 * Math.exp(-perRatio * u / (u + HALF)) * rest * rest;
        };
    ReadTable place =
        ReadTable.of(FluxPotential.tabulate(steep, new SingleLayer(), LARGEST, HALF, intervals), 0);

    for (int i = 0; i <= 1000; i++) {
      assertThat(place.coefficient(LARGEST * i / 1000.0)).isPositive();
    }
  }

  @Test
  void readsAnotherTableOfAsManyLayers() {
    PotentialReader reader = tabulate(INTERVALS, 1).reader();
    reader.goTo(0.2);
    double before = reader.potential(1);

    reader.switchTo(tabulate(INTERVALS, 2));

    assertThat(reader.potential(1) / before).isCloseTo(2, within(1e-14));
  }

  @Test
  void refusesATableOfOtherLayers() {
    PotentialReader reader = tabulate(INTERVALS, 1).reader();
    FluxPotential single =
        FluxPotential.tabulate((u, k) -> k[0] = 1, new SingleLayer(), LARGEST, HALF, INTERVALS);

    assertThat(assertThrows(IllegalArgumentException.class, () -> reader.switchTo(single)))
        .hasMessage("a reader takes tables of one number of layers only");
  }

  private static final PolynomialLayers LAYERS = new PolynomialLayers(-0.5, 0, 0.5);

  /** A table read at one value of the lumped state. */
  private record ReadTable(PotentialReader reader) {
    static ReadTable of(FluxPotential table, double border) {
      PotentialReader reader = table.reader();
      reader.goTo(border);
      reader.goToSlopes(border);
      return new ReadTable(reader);
    }

    double potential(double u) {
      return reader.potential(u);
    }

    double coefficient(double u) {
      return reader.coefficient(u);
    }

    double borderSlope(double u) {
      return reader.borderSlope(u);
    }
  }

  private static ReadTable threeLayers(int intervals, double border) {
    return ReadTable.of(tabulate(intervals, 1), border);
  }

  private static FluxPotential tabulate(int intervals, double factor) {
    FluxCoefficient layered =
        (u, k) -> {
          for (int i = 0; i < k.length; i++) {
            k[i] = factor * coefficient(u, LAYERS.places()[i]);
          }
        };
    return FluxPotential.tabulate(layered, LAYERS, LARGEST, HALF, intervals);
  }

  /** The coefficient as the layers make it. */
  private static double interpolated(double u, double border) {
    double[] weights = new double[3];
    LAYERS.weights(border, weights);
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * coefficient(u, LAYERS.places()[i]);
    }
    return sum;
  }

  private static double integral(double to, double border) {
    return integral(0, to, border);
  }

  private static double integral(double from, double to, double border) {
    return new IterativeLegendreGaussIntegrator(12, 1e-13, 1e-30)
        .integrate(100_000, u -> interpolated(u, border), from, to);
  }

  private static double slope(DoubleUnaryOperator function, double at, double width) {
    return (function.applyAsDouble(at + width) - function.applyAsDouble(at - width)) / (2 * width);
  }

  private static double largestError(int intervals) {
    ReadTable place = threeLayers(intervals, 0.2);
    double largest = 0;
    double exact = 0;
    for (int i = 1; i <= 90; i++) {
      double u = LARGEST * i / 90.0;
      exact += integral(LARGEST * (i - 1) / 90.0, u, 0.2);
      largest = Math.max(largest, Math.abs(place.potential(u) - exact));
    }
    return largest;
  }
}
