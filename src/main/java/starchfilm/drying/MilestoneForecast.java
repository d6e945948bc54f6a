package starchfilm.drying;

import starchfilm.numerics.evidence.Band;

/**
 * When one milestone of one spot comes.
 *
 * @param milestone which
 * @param timeS time since the pour (s), 10, 50 and 90 %; positive infinity where it never comes
 * @param shareReached share of the likely cases in which it comes at all, 0 to 1
 */
public record MilestoneForecast(Milestone milestone, Band timeS, double shareReached) {}
