package starchfilm.film;

import starchfilm.casting.Casting;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Thickness of the dry film from the pour, by mass balance and by adding volumes.
 *
 * <p>{@code h_dry = h_wet rho_paste w v(X)}
 *
 * <p>h: thickness (m); rho_paste: density of the paste (kg/m3); w: dry solids (kg per kg paste);
 * v(X): volume at the moisture X in the air of use (m3 per kg dry solids).
 *
 * <p>Valid for: film that stays stuck until dry, so that it shrinks in thickness only, and holds no
 * bubbles; an edge that lifts draws in by 5 to 15 % and gets thicker (judged).
 *
 * <p>Source: volume additivity meets the densities of wheat-starch film with 13.5 to 54 g glycerol
 * per 100 g (Averous et al., recalled) within 0.04 g/cm3.
 */
final class DryThickness {
  /** What the dry thickness rests on. */
  static final Source SOURCE =
      new Source(
          "dry thickness by mass balance with added volumes of starch, glycerol and water; densities"
              + " of film: Averous et al. 2000 to 2004, wheat starch",
          Check.RECALLED);

  private DryThickness() {}

  /**
   * The dry thickness.
   *
   * @param casting the pour and its paste
   * @param moisture equilibrium moisture (kg per kg dry solids) with its band
   * @return 10, 50 and 90 % points (m)
   */
  static Band of(Casting casting, Band moisture) {
    Composition paste = casting.composition();
    double solidsKgPerM2 =
        casting.wetThicknessM() * paste.pasteDensityKgPerM3() * paste.drySolids();
    double middle = paste.volumeM3PerKgDry(moisture.middle());
    double fromMoisture =
        Math.log(paste.volumeM3PerKgDry(moisture.high()) / paste.volumeM3PerKgDry(moisture.low()))
            / (2 * Band.Z90);
    double fromPour = casting.pour().wetThicknessM().sd() / casting.wetThicknessM();
    double logSd =
        Math.hypot(Math.hypot(fromPour, casting.paste().solidsRelativeSd()), fromMoisture);
    return Band.logNormal(solidsKgPerM2 * middle, Math.exp(logSd));
  }
}
