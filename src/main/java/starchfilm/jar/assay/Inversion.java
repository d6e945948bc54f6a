package starchfilm.jar.assay;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** From a reading back to the mixture of glycerol and water, by a table of the rule. */
final class Inversion {
  /** Steps of the table; linear between them, the mixture is exact to 1e-5. */
  private static final int STEPS = 200;

  private final PolynomialSplineFunction mixtures;

  /**
   * A table.
   *
   * @param rule what a mixture reads at the jar's temperature, by its glycerol fraction; rising
   */
  Inversion(DoubleUnaryOperator rule) {
    double[] fractions =
        IntStream.rangeClosed(0, STEPS).mapToDouble(i -> (double) i / STEPS).toArray();
    double[] readings =
        IntStream.rangeClosed(0, STEPS)
            .mapToDouble(i -> rule.applyAsDouble(fractions[i]))
            .toArray();
    mixtures = new LinearInterpolator().interpolate(readings, fractions);
  }

  /** Refuses a temperature for which density and refractive index are not known. */
  static void requireTemperature(double temperatureK) {
    CELSIUS.require(
        "temperature of the jar",
        temperatureK,
        15,
        30,
        "let the jar stand in the room for a few hours and read again");
  }

  /** What pure water reads. */
  double water() {
    return mixtures.getKnots()[0];
  }

  /** What pure glycerol reads. */
  double glycerol() {
    return mixtures.getKnots()[STEPS];
  }

  /** Glycerol in the mixture (kg per kg); NaN beyond pure water and pure glycerol. */
  double mixture(double reading) {
    return mixtures.isValidPoint(reading) ? mixtures.value(reading) : Double.NaN;
  }
}
