package starchfilm.jar.assay;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Figures;
import starchfilm.numerics.evidence.ValidRange;

/**
 * From a reading back to the mixture, with the range its error gives.
 *
 * <p>The rule rises with the glycerol, so the 10 and 90 % points of the reading are those of the
 * mixture; what lies beyond pure water or pure glycerol is put on that end.
 *
 * @param rule what a mixture reads at the jar's temperature, by its glycerol fraction
 * @param back its inverse between the two ends
 */
record Inversion(DoubleUnaryOperator rule, DoubleUnaryOperator back) {
  /** A reading this many standard deviations beyond pure glycerol or water is no such mixture. */
  private static final double BEYOND = 2.5;

  /** Temperatures for which density and refractive index are known (C). */
  private static final ValidRange CELSIUS = new ValidRange("temperature of the jar", 15, 30, "°C");

  static void requireTemperature(double temperatureK) {
    double celsius = temperatureK - ZERO_CELSIUS_K;
    // A kelvin typed as 303.15 must not fall off the end by rounding.
    double rounding = 1e-9;
    if (!(celsius >= CELSIUS.min() - rounding && celsius <= CELSIUS.max() + rounding)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%s: %s °C given, allowed %.0f to %.0f °C; let the jar stand in the room for a few"
                  + " hours and read again",
              CELSIUS.quantity(),
              Figures.of(celsius, 3),
              CELSIUS.min(),
              CELSIUS.max()));
    }
  }

  /**
   * The mixture.
   *
   * @param reading the reading, salt taken off
   * @param refusal what to say when no mixture reads so
   */
  Band of(Estimate reading, String refusal) {
    double best = reading.value();
    double sd = reading.sd();
    double water = rule.applyAsDouble(0);
    double glycerol = rule.applyAsDouble(1);
    if (!(best >= water - BEYOND * sd && best <= glycerol + BEYOND * sd)) {
      throw new IllegalArgumentException(refusal);
    }
    return new Band(mixture(best - Band.Z90 * sd), mixture(best), mixture(best + Band.Z90 * sd));
  }

  private double mixture(double reading) {
    if (reading <= rule.applyAsDouble(0)) {
      return 0;
    }
    if (reading >= rule.applyAsDouble(1)) {
      return 1;
    }
    return back.applyAsDouble(reading);
  }
}
