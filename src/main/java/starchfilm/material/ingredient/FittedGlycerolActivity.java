package starchfilm.material.ingredient;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.evidence.Source;

/**
 * Water activity of aqueous glycerol by a one-constant fit to three published routes.
 *
 * <p>{@code ln a = ln x_w - 0.9 x_g^2 x_w}
 *
 * <p>a: water activity (ratio); x_w, x_g: mole fractions of water and glycerol, adding up to 1.
 *
 * <p>Valid for: 20 to 30 C, the whole range of mixtures. Outside that temperature it is used
 * unchanged; by ASTM D5032 the activity of a given mixture moves by less than 0.007 between 20 and
 * 30 C.
 *
 * <p>Source: fitted by us to Zhang, Grace and Sun 2022, Drying Technol. 40:2404 (Wilson equation),
 * Forney and Brandl 1992, HortTechnology 2:52 (recalled), and the refractive-index column of ASTM
 * D5032 read with measured refractive indices.
 *
 * <p>Deviation: within 0.022 of those three from 40 to 95 % relative humidity and within 0.03 at 30
 * %; up to 0.035 above the weight-per-cent formula of ASTM D5032, which itself lies that far from
 * them between 50 and 95 % relative humidity. In high dilution it becomes Raoult's law, which the
 * standard's formula does not.
 */
public final class FittedGlycerolActivity {
  private static final double ATTRACTION = 0.9;
  private static final double MOLES_PER_MASS_RATIO = MolarMass.GLYCEROL / MolarMass.WATER;
  private static final int MOST_STEPS = 60;
  private static final double SMALL_STEP = 1e-14;

  /** Where the formula is published. */
  public static final Source SOURCE =
      new Source(
          "fitted to Zhang, Grace and Sun 2022, Drying Technol. 40:2404; Forney and Brandl 1992,"
              + " HortTechnology 2:52; refractive-index column of ASTM D5032",
          Check.COMPUTED);

  /**
   * Water activity over a solution.
   *
   * @param waterKgPerKgGlycerol water held (kg per kg glycerol, 0 or more; infinity is pure water)
   * @return water activity (ratio, 0 to 1), rising with the water held
   */
  public double activity(double waterKgPerKgGlycerol) {
    Refusal.unless(
        waterKgPerKgGlycerol >= 0,
        "water held by glycerol",
        waterKgPerKgGlycerol,
        "0 or more kg per kg glycerol");
    return Math.exp(logActivity(waterKgPerKgGlycerol * MOLES_PER_MASS_RATIO));
  }

  /**
   * Water held at an activity, the inverse of {@link #activity}.
   *
   * <p>Newton's method on {@code L(s) = ln(-ln a)} with {@code s = ln(x_w/x_g)}: in these
   * coordinates the curve is almost straight at the wet end, where {@code a} itself is flat, so
   * three to six steps reach rounding anywhere between 0 and 1.
   *
   * @param activity water activity (ratio, 0 to 1)
   * @return water held (kg per kg glycerol); 0 at activity 0, positive infinity at activity 1
   * @throws IllegalArgumentException outside 0 to 1
   */
  public double waterKgPerKgGlycerol(double activity) {
    Refusal.unless(
        activity >= 0 && activity <= 1, "water activity", activity, "0 to 1 (90 % is 0.9)");
    double logActivity = Math.log(activity);
    double target = Math.log(-logActivity);
    // Raoult's law, x_w = a, lies just below the answer; at 0 and 1, where s is infinite, it is the
    // answer, and no step is made.
    double s = logActivity - Math.log1p(-activity);
    double change = Double.POSITIVE_INFINITY;
    double small = SMALL_STEP * Math.max(1, Math.abs(s));
    for (int step = 0; step < MOST_STEPS && Math.abs(change) > small; step++) {
      double moleRatio = Math.exp(s);
      double reached = logActivity(moleRatio);
      change = (target - Math.log(-reached)) * reached / slope(moleRatio);
      s += change;
    }
    return Math.exp(s) / MOLES_PER_MASS_RATIO;
  }

  /** ln a at r = x_w/x_g; the two forms of ln x_w keep it exact at both ends. */
  private static double logActivity(double r) {
    double glycerol = 1 / (1 + r);
    double water = 1 - glycerol;
    double logWater = r < 1 ? Math.log(r) - Math.log1p(r) : -Math.log1p(1 / r);
    return logWater - ATTRACTION * glycerol * glycerol * water;
  }

  /** d(ln a)/d(ln r), always above 0. */
  private static double slope(double r) {
    double glycerol = 1 / (1 + r);
    double water = 1 - glycerol;
    return glycerol * (1 - ATTRACTION * glycerol * water * (1 - 3 * water));
  }
}
