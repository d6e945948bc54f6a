package starchfilm.planning;

import starchfilm.numerics.evidence.Band;

/**
 * The thickness a paste may be poured at to be ready by a date in a share of the likely cases.
 *
 * @param sure that share, above 0 and below 1
 * @param reach whether there is such a thickness
 * @param wetThicknessM the thickest such pour, averaged over the plate (m)
 * @param pourKg paste on one plate (kg)
 * @param dryThicknessM what it dries to, in the air of use (m)
 */
public record PourThickness(
    double sure, DateReach reach, double wetThicknessM, double pourKg, Band dryThicknessM) {

  /** The answer to whether a date can be met by pouring thinner. */
  public enum DateReach {
    /** This thickness just meets it. */
    FOUND,
    /** Not even a pour of 0.1 mm meets it; the figures are those of such a pour. */
    TOO_SOON,
    /** Even a pour of 25 mm meets it; the figures are those of such a pour. */
    ANY
  }
}
