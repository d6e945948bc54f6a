package starchfilm.learning;

import starchfilm.casting.Casting;

/**
 * The model's own error in the weight of a plate under way, beside the scale's error.
 *
 * <p>Two parts, added in squares. One of the way there: {@code 0.04 m (M - m)/M}, m the film's mass
 * and M the poured one; nothing at the pour, little when the film is at rest, most half-way. One of
 * the end, where thin parts are dry and thick ones not: of a plate whose thickness is spread evenly
 * over 1 - u to 1 + u and whose parts each dry at the same steady pace, the share {@code (t - 1 +
 * u)^2/(4 u)} of the water is left behind at the time t (that of the mean thickness is 1), up to
 * u/4 at t = 1. The unevenness u is hardly ever measured, so half of that is taken as a standard
 * uncertainty, falling to nothing as the last parts dry. Both judged, no source.
 *
 * @param pouredKg mass of the fresh paste (kg)
 * @param waterKg what of it dries away (kg)
 * @param unevenness u, as in {@link starchfilm.casting.Pour}
 */
public record ModelMiss(double pouredKg, double waterKg, double unevenness) {
  private static final double ON_THE_WAY = 0.04;
  private static final double DOUBT_OF_UNEVENNESS = 0.5;

  /** Moisture a film keeps (kg/kg), roughly; judged. */
  private static final double KEPT_MOISTURE = 0.15;

  /** Of one plate. */
  public static ModelMiss of(Casting drying) {
    double poured = drying.pastePerPlateKg();
    double film = poured * drying.composition().drySolids() * (1 + KEPT_MOISTURE);
    return new ModelMiss(poured, Math.max(0, poured - film), drying.pour().unevenness());
  }

  /**
   * Standard uncertainty of the expected mass.
   *
   * @param filmKg the mass noted (kg)
   * @return standard uncertainty (kg)
   */
  public double sdKg(double filmKg) {
    double gone = Math.max(0, pouredKg - filmKg);
    double onTheWay = ON_THE_WAY * filmKg * gone / pouredKg;
    return Math.hypot(onTheWay, DOUBT_OF_UNEVENNESS * leftBehindKg(gone));
  }

  /** Water left behind by the thick parts when so much is gone: straight up to u/4, then down. */
  private double leftBehindKg(double goneKg) {
    if (unevenness == 0 || waterKg == 0) {
      return 0;
    }
    double share = goneKg / waterKg;
    double most = unevenness / 4;
    double rising = (share - (1 - unevenness)) / (unevenness - most);
    double falling = (1 - share) / most;
    return waterKg * most * Math.max(0, Math.min(rising, falling));
  }
}
