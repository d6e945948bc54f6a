package starchfilm.drying;

import starchfilm.numerics.evidence.Band;

/**
 * When one milestone of one spot comes.
 *
 * @param timeS time since the pour (s), 10, 50 and 90 % of the likely cases in which it can come;
 *     positive infinity where it does not come in time, and throughout where at most one case in
 *     ten could
 * @param shareReached share of all likely cases in which it comes, 0 to 1
 */
public record MilestoneForecast(Band timeS, double shareReached) {}
