package starchfilm.recipe;

import starchfilm.evidence.Estimate;

/**
 * How the paste was cooked.
 *
 * @param durationS time at the top temperature (s)
 * @param topTemperatureK top temperature (K)
 * @param waterLostKg water that left the pot as steam (kg), weighed or estimated with its
 *     uncertainty
 */
public record Cook(Estimate durationS, Estimate topTemperatureK, Estimate waterLostKg) {}
