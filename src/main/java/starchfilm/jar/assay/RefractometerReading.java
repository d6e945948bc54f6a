package starchfilm.jar.assay;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Locale;
import starchfilm.material.ingredient.GlycerolRefractiveIndex;
import starchfilm.material.ingredient.Hoyt1934;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Propagation;
import starchfilm.numerics.evidence.Source;

/**
 * The refractive index of a jar's content at a temperature.
 *
 * <p>Dissolved salt is taken off in proportion: {@code n_gw = n - k_s s - k_f f}, s, f: salt and
 * fatty matter (kg per kg jar), k_s 0.11 to 0.18, k_f 0 to 0.15 (judged). Source of k_s: sodium
 * chloride in water raises the index by 0.0017 to 0.0018 a per cent, other salts of the trade by
 * 0.0011 to 0.0018; CRC Handbook of Chemistry and Physics, concentrative properties (recalled);
 * taken for glycerol too (assumed).
 *
 * <p>Limits: alcohol and water read alike, so this reading counts alcohol as water.
 *
 * @param index refractive index at 589 nm (ratio)
 * @param temperatureK temperature on the prism (K)
 */
public record RefractometerReading(Estimate index, Estimate temperatureK) implements JarReading {
  private static final GlycerolRefractiveIndex RULE = new Hoyt1934();
  private static final Estimate INDEX_PER_SALT = Estimate.between(0.11, 0.18);
  private static final Estimate INDEX_PER_FATTY = Estimate.between(0, 0.15);
  private static final double STEP_K = 0.5;

  /** Checks the temperature. */
  public RefractometerReading {
    Inversion.requireTemperature(temperatureK.value());
  }

  @Override
  public Band glycerolInMixture(Dissolved dissolved) {
    double kelvin = temperatureK.value();
    double rough = roughly(index.value(), kelvin);
    double perKelvin =
        (RULE.index(rough, kelvin + STEP_K) - RULE.index(rough, kelvin - STEP_K)) / (2 * STEP_K);
    Estimate mixture =
        Propagation.firstOrder(
            x -> x[0] - x[1] * x[3] - x[2] * x[4] - perKelvin * (x[5] - kelvin) + x[6],
            index,
            dissolved.salt(),
            dissolved.fatty(),
            INDEX_PER_SALT,
            INDEX_PER_FATTY,
            temperatureK,
            new Estimate(0, RULE.indexSd(rough, kelvin)));
    return new Inversion(w -> RULE.index(w, kelvin), n -> RULE.glycerolFraction(n, kelvin))
        .of(
            mixture,
            String.format(
                Locale.ROOT,
                "refractive index: %.4f given, allowed %.4f (water) to %.4f (pure glycerol) at"
                    + " %.1f °C; set the zero with water, wipe the prism and read again",
                index.value(),
                RULE.index(0, kelvin),
                RULE.index(1, kelvin),
                kelvin - ZERO_CELSIUS_K));
  }

  @Override
  public double falseGlycerolPerSalt() {
    double kelvin = temperatureK.value();
    return INDEX_PER_SALT.value() / (RULE.index(1, kelvin) - RULE.index(0, kelvin));
  }

  @Override
  public Source source() {
    return RULE.source();
  }

  /** The mixture as if the index were straight in it, for the slopes only. */
  private static double roughly(double n, double kelvin) {
    double water = RULE.index(0, kelvin);
    double share = (n - water) / (RULE.index(1, kelvin) - water);
    return Math.min(1, Math.max(0, share));
  }
}
