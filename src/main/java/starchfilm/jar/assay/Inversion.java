package starchfilm.jar.assay;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** From a reading back to the mixture of glycerol and water, by a table of the rule. */
final class Inversion {
  /** Steps of the table; linear between them, the mixture is exact to 1e-5. */
  private static final int STEPS = 200;

  private final double[] table;

  /**
   * A table.
   *
   * @param rule what a mixture reads at the jar's temperature, by its glycerol fraction; rising
   */
  Inversion(DoubleUnaryOperator rule) {
    table =
        IntStream.rangeClosed(0, STEPS)
            .mapToDouble(i -> rule.applyAsDouble((double) i / STEPS))
            .toArray();
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
    return table[0];
  }

  /** What pure glycerol reads. */
  double glycerol() {
    return table[STEPS];
  }

  /** Glycerol in the mixture (kg per kg); NaN beyond pure water and pure glycerol. */
  double mixture(double reading) {
    if (!(reading >= water() && reading <= glycerol())) {
      return Double.NaN;
    }
    int found = Arrays.binarySearch(table, reading);
    if (found >= 0) {
      return (double) found / STEPS;
    }
    int below = -found - 2;
    double within = (reading - table[below]) / (table[below + 1] - table[below]);
    return (below + within) / STEPS;
  }
}
