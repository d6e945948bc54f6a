package starchfilm.jar.assay;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Locale;
import starchfilm.material.ingredient.Hoyt1934;
import starchfilm.numerics.evidence.Estimate;
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
  private static final Hoyt1934 RULE = new Hoyt1934();
  private static final Estimate INDEX_PER_SALT = Estimate.between(0.11, 0.18);
  private static final Estimate INDEX_PER_FATTY = Estimate.between(0, 0.15);

  private static final double HALF_A_KELVIN = 0.5;

  /** Checks the temperature. */
  public RefractometerReading {
    Inversion.requireTemperature(temperatureK.value());
  }

  @Override
  public Inversion inversion() {
    return new Inversion(w -> RULE.index(w, temperatureK.value()));
  }

  @Override
  public double glycerol(Inversion table, Dissolved beside, Draws draws) {
    double kelvin = temperatureK.value();
    double warmer = draws.normal(temperatureK) - kelvin;
    double clipped = Math.max(table.water(), Math.min(table.glycerol(), index.value()));
    double rough = table.mixture(clipped);
    double perKelvin =
        RULE.index(rough, kelvin + HALF_A_KELVIN) - RULE.index(rough, kelvin - HALF_A_KELVIN);
    double mixture =
        draws.normal(index)
            - beside.salt() * draws.rectangle(INDEX_PER_SALT)
            - beside.fatty() * draws.rectangle(INDEX_PER_FATTY)
            - perKelvin * warmer
            + draws.normal(new Estimate(0, RULE.indexSd(rough, kelvin)));
    return (1 - beside.stays()) * table.mixture(mixture);
  }

  @Override
  public double falseGlycerol(Dissolved beside) {
    Inversion table = inversion();
    return (beside.salt() * INDEX_PER_SALT.value() + beside.fatty() * INDEX_PER_FATTY.value())
        / (table.glycerol() - table.water());
  }

  @Override
  public String refusal() {
    Inversion table = inversion();
    return String.format(
        Locale.ROOT,
        "refractive index: %.4f given, allowed %.4f (water) to %.4f (pure glycerol) at"
            + " %.1f °C; set the zero with water, wipe the prism and read again",
        index.value(),
        table.water(),
        table.glycerol(),
        temperatureK.value() - ZERO_CELSIUS_K);
  }

  @Override
  public Source source() {
    return Hoyt1934.SOURCE;
  }
}
