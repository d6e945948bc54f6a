package starchfilm.today;

import starchfilm.numerics.evidence.Band;

/**
 * What a scale under one plate shows at a moment, and what one more look at it would tell; see
 * {@link ScaleCourse}.
 *
 * @param nowKg film on the plate now (kg); no lighter than it may be at rest
 * @param peelableKg the film when it is peelable (kg), in the middle case
 * @param dryKg the film when it is dry through (kg), in the middle case
 * @param restKg the film when it has come to rest (kg), in the middle case
 * @param rangeLeft how much of the range of the dry-through time a weighing now would leave, 0 to
 *     1; 1 where that cannot be known
 */
public record ScaleForecast(
    Band nowKg, double peelableKg, double dryKg, double restKg, double rangeLeft) {}
