package starchfilm.planning;

import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;

import java.util.List;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Between which wet thicknesses a paste spreads by itself and stays on the plate.
 *
 * <p>A ridge of the pour with wave number k dies away as {@code exp(-t/tau)},
 *
 * <p>{@code 1/tau = h^3 k^2 (rho g + sigma k^2)/(3 eta)}
 *
 * <p>so the thinnest pour that levels in the time before it sets follows from h. Without a rim a
 * pool stands no higher than
 *
 * <p>{@code e = 2 sqrt(sigma/(rho g)) sin(theta/2)},
 *
 * <p>and at a sharp edge theta may open to 180 degrees at most. h: wet thickness (m); rho: density
 * (kg/m3); g: 9.80665 m/s2; sigma: surface tension (N/m); eta: viscosity (Pa s); theta: contact
 * angle.
 *
 * <p>Limits: the paste is taken as a Newtonian liquid; one that has begun to set neither levels nor
 * runs off.
 *
 * @param viscosityPaS viscosity of the paste when poured (Pa s)
 * @param levelsFromM thinnest pour that levels by itself (m); a thinner one is drawn out with a rod
 * @param standsUpToM thickest pour that stays on a plate without a rim (m)
 */
public record Levelling(double viscosityPaS, double levelsFromM, double standsUpToM) {
  /** The sources of the rules. */
  public static final List<Source> SOURCES =
      List.of(
          new Source(
              "levelling of a viscous layer: Orchard 1962, Applied Scientific Research A 11:451;"
                  + " height of a pool: de Gennes, Brochard-Wyart and Quere 2004, Capillarity and"
                  + " Wetting Phenomena, section 2.2",
              Check.RECALLED),
          new Source(
              "viscosity of the paste when poured: 0.5 Pa s at the thin end of what people cast at,"
                  + " ten times that at the thick end; 5 minutes until it sets; ridges 50 mm apart:"
                  + " assumed, no source",
              Check.JUDGED));

  /** Surface tension of water at 60 C (N/m). Source: IAPWS R1-76 (recalled), 66.24 mN/m. */
  private static final double SURFACE_TENSION_N_PER_M = 0.06624;

  private static final double THIN_PASTE_PA_S = 0.5;
  private static final double THICKENS_BY = 10;
  private static final double UNTIL_IT_SETS_S = 300;
  private static final double RIDGE_SPACING_M = 0.05;

  /** A ridge is gone at a twentieth of its height: after three times tau. */
  private static final double TIMES_TAU = 3;

  static Levelling of(Composition paste) {
    return of(
        StarchBlend.of(paste.starchShares(), Double.POSITIVE_INFINITY),
        paste.dryStarch(),
        paste.pasteDensityKgPerM3());
  }

  static Levelling of(StarchBlend blend, double starchInPaste, double densityKgPerM3) {
    double place =
        (starchInPaste - blend.castFrom()) / Math.max(1e-9, blend.castTo() - blend.castFrom());
    double viscosity = THIN_PASTE_PA_S * Math.pow(THICKENS_BY, place);
    return new Levelling(
        viscosity,
        thinnestLevelling(
            viscosity,
            densityKgPerM3,
            SURFACE_TENSION_N_PER_M,
            RIDGE_SPACING_M,
            UNTIL_IT_SETS_S / TIMES_TAU),
        standsUpToM(densityKgPerM3));
  }

  /** How high paste of a density stands on a plate without a rim (m). */
  static double standsUpToM(double densityKgPerM3) {
    return poolHeight(densityKgPerM3, SURFACE_TENSION_N_PER_M, Math.PI);
  }

  /** The layer (m) whose ridges die away by a factor e in tau. */
  static double thinnestLevelling(
      double viscosityPaS,
      double densityKgPerM3,
      double surfaceTensionNPerM,
      double ridgeSpacingM,
      double tauS) {
    double k = 2 * Math.PI / ridgeSpacingM;
    double driving = densityKgPerM3 * GRAVITY_M_PER_S2 + surfaceTensionNPerM * k * k;
    return Math.cbrt(3 * viscosityPaS / (tauS * k * k * driving));
  }

  /** Height (m) of a wide pool with a contact angle (rad). */
  static double poolHeight(double densityKgPerM3, double surfaceTensionNPerM, double angle) {
    return 2
        * Math.sqrt(surfaceTensionNPerM / (densityKgPerM3 * GRAVITY_M_PER_S2))
        * Math.sin(angle / 2);
  }
}
