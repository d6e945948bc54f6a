package starchfilm.material.air;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Mass transfer by air that is driven along a flat plate.
 *
 * <p>{@code Sh = 0.664 Re^(1/2) Sc^(1/3)}; past Re 5e5, for a layer first laminar, then turbulent,
 * {@code Sh = (0.037 Re^0.8 - 871) Sc^(1/3)}; Sh, Re, Sc: numbers of Sherwood, Reynolds, Schmidt.
 * The two meet at Re 5e5 with different slopes and are faded between 4.5e5 and 5.5e5.
 *
 * <p>The length is the side of the square of the same area, for nobody knows where a draught comes
 * from (assumed, no source).
 *
 * <p>Valid for: Re to 1e8, Sc 0.6 to 60.
 *
 * <p>Source: Incropera et al., Fundamentals of Heat and Mass Transfer, equations 7.30 and 7.38
 * (recalled).
 */
final class ForcedFlow {
  static final Source SOURCE =
      new Source(
          "forced flow along a plate: Incropera et al., Fundamentals of Heat and Mass Transfer,"
              + " equations 7.30 and 7.38",
          Check.RECALLED);

  private static final double LAMINAR = 0.664;
  private static final double MIXED = 0.037;
  private static final double MIXED_EXPONENT = 0.8;
  private static final double MIXED_OFFSET = 871;
  private static final double MIXED_FROM_RE = 4.5e5;
  private static final double MIXED_TO_RE = 5.5e5;

  /** Below this speed times length (m2/s) no room air reaches the mixed layer. */
  private static final double SURELY_LAMINAR = MIXED_FROM_RE * 1e-5;

  private final double lengthM;
  private final double thinness;
  private final double laminarScale;
  private double flowM2PerS;
  private double laminarCoefficient;

  /**
   * A plate.
   *
   * @param areaM2 area of the plate (m2)
   * @param thinness standard pressure over pressure (ratio)
   */
  ForcedFlow(double areaM2, double thinness) {
    this.lengthM = Math.sqrt(areaM2);
    this.thinness = thinness;
    this.laminarScale = LAMINAR * Math.sqrt(thinness / lengthM);
  }

  void setSpeed(double speedMPerS) {
    this.flowM2PerS = speedMPerS * lengthM;
    this.laminarCoefficient = laminarScale * Math.sqrt(speedMPerS);
  }

  /**
   * The mass-transfer coefficient.
   *
   * @param x film temperature, as a position in {@link SmoothFit}
   * @return m/s
   */
  double massTransferMPerS(double x) {
    double laminar = laminarCoefficient * FilmLayer.LAMINAR_GROUP.at(x);
    return flowM2PerS < SURELY_LAMINAR * thinness ? laminar : mixed(x, laminar);
  }

  private double mixed(double x, double laminar) {
    double reynolds = flowM2PerS / (FilmLayer.KINEMATIC_VISCOSITY_M2_PER_S.at(x) * thinness);
    if (reynolds <= MIXED_FROM_RE) {
      return laminar;
    }
    double mixed =
        laminar
            * (MIXED * Math.pow(reynolds, MIXED_EXPONENT) - MIXED_OFFSET)
            / (LAMINAR * Math.sqrt(reynolds));
    double fade = Math.min(1, (reynolds - MIXED_FROM_RE) / (MIXED_TO_RE - MIXED_FROM_RE));
    double weight = fade * fade * (3 - 2 * fade);
    return laminar + weight * (mixed - laminar);
  }
}
