package starchfilm.material.recipe;

import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;

/**
 * How the paste was cooked.
 *
 * @param durationS time at the top temperature (s)
 * @param topTemperatureK top temperature (K)
 * @param waterLostKg water that left the pot as steam (kg), weighed or estimated with its
 *     uncertainty
 */
public record Cook(Estimate durationS, Estimate topTemperatureK, Estimate waterLostKg) {
  /** Checks that neither time nor water is negative and the temperature is above absolute zero. */
  public Cook {
    Refusal.unless(durationS.value() >= 0, "cooking time", durationS.value(), " s", "0 s or more");
    Refusal.unless(
        topTemperatureK.value() > 0,
        "top temperature of the cook",
        topTemperatureK.value(),
        " K",
        "above 0 K; 90 °C is 363.15 K");
    Amounts.requireMass("water lost in the pot", waterLostKg);
  }
}
