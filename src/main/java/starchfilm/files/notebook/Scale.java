package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.KG_PER_G;

import java.util.OptionalDouble;
import starchfilm.numerics.evidence.Estimate;

/**
 * What a reading of the kitchen scale is worth.
 *
 * <p>A reading stands for everything that rounds to it: a rectangle one step wide, {@code sd =
 * step/sqrt(12)}. Source: JCGM 100:2008 (GUM), F.2.2.1 (recalled). Where the file does not give the
 * scale's step, the last digit written is taken for it.
 *
 * @param stepG the step of the display (g), if the file gives it
 */
record Scale(OptionalDouble stepG) {

  /** Standard uncertainty of a reading (kg). */
  double sdKg(double lastDigitG) {
    return stepG.orElse(lastDigitG) / Math.sqrt(12) * KG_PER_G;
  }

  /**
   * A weighed amount; 0 g means none and is exact.
   *
   * @param otherwiseKg what to take where nothing is known (kg)
   * @return in kg
   */
  Estimate kg(Amount amount, Estimate otherwiseKg) {
    if (amount instanceof Amount.Exact reading) {
      double sd = reading.value() == 0 ? 0 : sdKg(reading.lastDigit());
      return new Estimate(reading.value() * KG_PER_G, sd);
    }
    return amount.isKnown() ? amount.or(Estimate.exact(0)).times(KG_PER_G) : otherwiseKg;
  }
}
