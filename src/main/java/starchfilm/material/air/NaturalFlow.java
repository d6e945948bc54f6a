package starchfilm.material.air;

import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Mass transfer by air that moves of its own weight over a horizontal plate.
 *
 * <p>Sh and Ra are the numbers of Sherwood and, for mass, Rayleigh: {@code Ra = g (drho/rho)
 * L^3/(nu D)}, with densities of air with its moisture and L area over perimeter.
 *
 * <ul>
 *   <li>The air at the surface moves away by itself (lighter air over an upper face): {@code 0.54
 *       Ra^(1/4)}, Ra 1e4 to 1e7, and {@code 0.15 Ra^(1/3)}, Ra 1e7 to 1e11. Source: McAdams 1954;
 *       Lloyd and Moran 1974, J. Heat Transfer 96:443 (read in a teaching text).
 *   <li>It lies still (heavier air over an upper face, the usual case of a wet plate in a room):
 *       {@code 0.52 Ra^(1/5)}, Ra 1e4 to 1e9. Source: the same teaching text; Radziemska and
 *       Lewandowski 2001, Appl. Energy 68:347 (recalled). The older {@code 0.27 Ra^(1/4)} begins at
 *       Ra 1e5, above a plate of 0.2 m, and is 15 % lower there.
 *   <li>Never below pure conduction, Sh = 1.
 * </ul>
 *
 * <p>Deviation: the cases are joined smoothly, so that a solver can differentiate. Conduction joins
 * each laminar branch, and the turbulent branch its laminar one, in the power of their exponents:
 * {@code Sh^12 = (1 + 0.54^4 Ra)^3 + (0.15^3 Ra)^4} and {@code Sh^5 = 1 + 0.52^5 Ra}. Around equal
 * density the two cases pass into one another over some 0.1 K (judged).
 *
 * <p>Limits: near equal density, and for plates under 0.15 m, the correlations are used below their
 * range. Speeds of exactly 0 hardly occur in a room; the forced part then rules.
 */
final class NaturalFlow {
  static final Source SOURCE =
      new Source(
          "natural flow over a horizontal plate: McAdams 1954; Lloyd and Moran 1974, J. Heat"
              + " Transfer 96:443; Radziemska and Lewandowski 2001, Appl. Energy 68:347 (formulas"
              + " read in a teaching text, the last one's authors recalled)",
          Check.READ);

  private static final double UNSTABLE_TO_FOURTH = 0.54 * 0.54 * 0.54 * 0.54;
  private static final double TURBULENT_TO_TWELFTH = Math.pow(0.15, 12);
  private static final double STABLE_TO_FIFTH = Math.pow(0.52, 5);
  private static final double CUBE_OF_FIFTH_ROOT = 3 / 5.0;

  /**
   * Relative density difference over which the two cases are joined (judged): that of 0.1 K, by
   * which the air of a still room flutters anyway.
   */
  private static final double JOINT = 3e-4;

  private final double lengthM;
  private final double rayleighScale;
  private boolean facingDown;

  /**
   * A plate.
   *
   * @param areaM2 area of the plate (m2)
   * @param perimeterM perimeter of the plate (m)
   * @param thinness standard pressure over pressure (ratio)
   */
  NaturalFlow(double areaM2, double perimeterM, double thinness) {
    this.lengthM = areaM2 / perimeterM;
    this.rayleighScale = GRAVITY_M_PER_S2 * lengthM * lengthM * lengthM / (thinness * thinness);
  }

  void setFacingDown(boolean facingDown) {
    this.facingDown = facingDown;
  }

  /**
   * The cube of the mass-transfer coefficient, which is what joins with forced flow.
   *
   * @param x film temperature, as a position in {@link SmoothFit}
   * @param diffusivityM2PerS vapour diffusivity (m2/s)
   * @param lighter how much lighter the air at the surface is than the room's, over their mean
   *     (ratio)
   * @return m3/s3
   */
  double massTransferCubed(double x, double diffusivityM2PerS, double lighter) {
    double difference = Math.sqrt(lighter * lighter + JOINT * JOINT);
    double awayShare = (1 + (facingDown ? -lighter : lighter) / difference) / 2;
    double rayleigh = rayleighScale * difference / FilmLayer.RAYLEIGH_GROUP.at(x);
    double laminar = 1 + UNSTABLE_TO_FOURTH * rayleigh;
    double squared = rayleigh * rayleigh;
    double away =
        Math.sqrt(
            Math.sqrt(laminar * laminar * laminar + TURBULENT_TO_TWELFTH * squared * squared));
    double lying = Math.pow(1 + STABLE_TO_FIFTH * rayleigh, CUBE_OF_FIFTH_ROOT);
    double conduction = diffusivityM2PerS / lengthM;
    return conduction * conduction * conduction * (lying + awayShare * (away - lying));
  }
}
