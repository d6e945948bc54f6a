package starchfilm.drying;

import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * How much one uncertain factor contributes to the range of the thick spot's dry-through.
 *
 * @param factor which
 * @param share its share of the variance of the logarithm of the time, 0 to 1
 */
public record SpreadDriver(UncertainParameter factor, double share) {}
