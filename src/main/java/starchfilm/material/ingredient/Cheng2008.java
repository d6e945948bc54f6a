package starchfilm.material.ingredient;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * Viscosity of aqueous glycerol.
 *
 * <p>{@code mu = mu_w^alpha mu_g^(1 - alpha)}, {@code alpha = 1 - w + a b w (1 - w)/(a w + b (1 -
 * w))}
 *
 * <p>{@code mu_w = 1.790 exp[(-1230 - T) T/(36100 + 360 T)]}, {@code mu_g = 12100 exp[(-1233 + T)
 * T/(9900 + 70 T)]}, {@code a = 0.705 - 0.0017 T}, {@code b = (4.9 + 0.036 T) a^2.5}
 *
 * <p>mu, mu_w, mu_g: dynamic viscosity of mixture, water and glycerol (mPa s); w: mass fraction of
 * glycerol; T: temperature (C).
 *
 * <p>Valid for: 0 to 100 C, the whole range of mixtures. Outside: used unchanged; the caller flags
 * it.
 *
 * <p>Source: Cheng 2008, Formula for the viscosity of a glycerol-water mixture, Ind. Eng. Chem.
 * Res. 47:3285, equations 6 and 12 to 22, doi 10.1021/ie071349z (coefficients read in published
 * code copies, equation numbers recalled).
 *
 * <p>Deviation: none; within 3 % of the measured table of Segur and Oberstar 1951 at 20 and 30 C.
 */
public final class Cheng2008 implements GlycerolViscosity {
  private static final double PASCAL_SECONDS_PER_MPAS = 1e-3;

  private static final Source SOURCE =
      new Source("Cheng 2008, Ind. Eng. Chem. Res. 47:3285", Check.READ);

  private static final List<ValidRange> RANGES =
      List.of(new ValidRange("temperature", 0, 100, "°C"));

  @Override
  public double pascalSeconds(double glycerolFraction, double temperatureK) {
    Mixtures.requireFraction(glycerolFraction);
    double celsius = temperatureK - ZERO_CELSIUS_K;
    double water = 1.790 * Math.exp((-1230 - celsius) * celsius / (36100 + 360 * celsius));
    double glycerol = 12100 * Math.exp((-1233 + celsius) * celsius / (9900 + 70 * celsius));
    double a = 0.705 - 0.0017 * celsius;
    double b = (4.9 + 0.036 * celsius) * Math.pow(a, 2.5);
    double w = glycerolFraction;
    double alpha = 1 - w + a * b * w * (1 - w) / (a * w + b * (1 - w));
    return Math.pow(water, alpha) * Math.pow(glycerol, 1 - alpha) * PASCAL_SECONDS_PER_MPAS;
  }

  @Override
  public Source source() {
    return SOURCE;
  }

  @Override
  public List<ValidRange> ranges() {
    return RANGES;
  }
}
