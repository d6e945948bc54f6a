package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.G_PER_KG;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import starchfilm.files.json.Located.NumberValue;

/**
 * What a reading of the kitchen scale is worth.
 *
 * <p>A reading stands for everything that rounds to it: a rectangle one step wide, {@code sd =
 * step/sqrt(12)}. Source: JCGM 100:2008 (GUM), F.2.2.1 (recalled). Where the file does not give the
 * scale's step, the last digit written is taken for it.
 *
 * @param stepKg the step of the display (kg), if the file gives it
 */
record KitchenScale(OptionalDouble stepKg) {
  /** Standard uncertainty of a reading (g); 0 g means none and is exact. */
  double sdG(NumberValue reading) {
    // A nought may have any exponent, also one that no number could have.
    if (reading.value() == 0) {
      return 0;
    }
    double lastDigit = Math.pow(10, -Math.max(0, new BigDecimal(reading.literal()).scale()));
    return (stepKg.isPresent() ? stepKg.getAsDouble() * G_PER_KG : lastDigit) / Math.sqrt(12);
  }
}
