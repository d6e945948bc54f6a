package starchfilm.drying;

import starchfilm.numerics.evidence.Band;

/**
 * The drying curve at one moment, each moisture averaged over the spot's thickness.
 *
 * @param timeS time since the pour (s)
 * @param nominal moisture at the nominal thickness (kg water per kg dry solids), 10, 50 and 90 %
 * @param thinEdge median moisture at the thin edge (kg/kg)
 * @param thickSpot median moisture at the thick spot (kg/kg)
 */
public record CurvePoint(double timeS, Band nominal, double thinEdge, double thickSpot) {}
