package starchfilm.jar.assay;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Locale;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.figures.Figures;

/**
 * The density of a jar's content at a temperature.
 *
 * <p>Salt, soap, fatty acid and alcohol are taken off by their volume: {@code rho_gw = (1 - s - f -
 * a)/(1/rho - s v_s - f v_f - a v_a)}, s, f, a: salt, fatty matter and alcohol (kg per kg jar),
 * v_s, v_f, v_a: volume they add (m3/kg). Source of v_s: partial volumes of sodium and potassium
 * chloride, acetate and sulfate in water, Millero 1971, Chem. Rev. 71:147 (recalled): 0.15 to 0.5
 * L/kg. Source of v_f: oleic acid 895 kg/m3, CRC Handbook (recalled), soap near 1050 (judged).
 * Source of v_a: from the partial volume in much water, 38.2 mL/mol of methanol and 55.1 of ethanol
 * (recalled), to that of the pure liquid, CRC Handbook (recalled): 1.19 to 1.27 L/kg.
 *
 * <p>Limits: bubbles make a jar lighter; air's lift and the widening of the glass are left out,
 * both below 0.05 %.
 *
 * @param densityKgPerM3 density (kg/m3)
 * @param temperatureK temperature (K)
 */
public record DensityReading(Estimate densityKgPerM3, Estimate temperatureK) implements JarReading {
  private static final VolkKaehler2018 RULE = new VolkKaehler2018();
  private static final Estimate SALT_M3_PER_KG = Estimate.between(0.15e-3, 0.5e-3);
  private static final Estimate FATTY_M3_PER_KG = Estimate.between(0.95e-3, 1.13e-3);

  private static final Estimate ALCOHOL_M3_PER_KG = Estimate.between(1.19e-3, 1.27e-3);

  /** Mean of water (2.1e-4/K) and glycerol (4.9e-4/K) near 20 C, from the rule itself. */
  private static final double EXPANSION_PER_K = 4.0e-4;

  /** Checks the temperature. */
  public DensityReading {
    Inversion.requireTemperature(temperatureK.value());
  }

  /**
   * A volume that was weighed.
   *
   * @param massKg its mass (kg)
   * @param volumeM3 the volume (m3)
   * @param temperatureK its temperature (K)
   * @return the density
   */
  public static DensityReading weighedVolume(
      Estimate massKg, Estimate volumeM3, Estimate temperatureK) {
    Refusal.unless(
        volumeM3.value() > 0 && massKg.value() > 0,
        "mass and volume",
        Figures.grams(massKg.value()) + " g and " + Figures.of(volumeM3.value() * 1e6, 3) + " ml",
        "more than 0 of each");
    return new DensityReading(massKg.over(volumeM3), temperatureK);
  }

  /**
   * A bottle weighed three times: empty, brimful of water, brimful of the jar's content, all at one
   * temperature. The bottle's volume drops out.
   *
   * <p>{@code rho = rho_w r, r = (m_s - m_0)/(m_w - m_0)}, {@code u^2(r) = [u_s^2 + (r u_w)^2 + ((r
   * - 1) u_0)^2]/(m_w - m_0)^2}. Source of the uncertainty: JCGM 100:2008 (GUM), 5.1.2, equation 10
   * (recalled).
   *
   * @param emptyKg empty bottle (kg)
   * @param withWaterKg with water (kg)
   * @param withSampleKg with the jar's content (kg)
   * @param temperatureK temperature of both (K)
   * @return the density
   */
  public static DensityReading bottle(
      Estimate emptyKg, Estimate withWaterKg, Estimate withSampleKg, Estimate temperatureK) {
    double water = withWaterKg.value() - emptyKg.value();
    double sample = withSampleKg.value() - emptyKg.value();
    if (!(emptyKg.value() >= 0) || !(water > 0) || !(sample > 0)) {
      throw new IllegalArgumentException(
          ("bottle: %s g empty, %s g with water and %s g with the sample given; both"
                  + " fillings must weigh more than the empty bottle")
              .formatted(
                  Figures.grams(emptyKg.value()),
                  Figures.grams(withWaterKg.value()),
                  Figures.grams(withSampleKg.value())));
    }
    double ratio = sample / water;
    // The empty bottle is in both differences, so its error partly cancels.
    double fillingsSd = Math.hypot(withSampleKg.sd(), ratio * withWaterKg.sd());
    double sd = Math.hypot(fillingsSd, (ratio - 1) * emptyKg.sd()) / water;
    double waterKgPerM3 = RULE.kgPerM3(0, temperatureK.value());
    return new DensityReading(new Estimate(ratio, sd).times(waterKgPerM3), temperatureK);
  }

  @Override
  public double glycerol(Inversion table, Dissolved beside, Draws draws) {
    double saltM3 = beside.salt() * draws.rectangle(SALT_M3_PER_KG);
    double fattyM3 = beside.fatty() * draws.rectangle(FATTY_M3_PER_KG);
    double alcoholM3 = beside.alcohol() * draws.rectangle(ALCOHOL_M3_PER_KG);
    double density = draws.normal(densityKgPerM3);
    double warmer = draws.normal(temperatureK) - temperatureK.value();
    double share = 1 - beside.all();
    double mixture = share / (1 / density - saltM3 - fattyM3 - alcoholM3);
    double atItsTemperature = mixture + EXPANSION_PER_K * mixture * warmer;
    return share
        * table.mixture(atItsTemperature + draws.normal(new Estimate(0, RULE.kgPerM3Sd())));
  }

  @Override
  public double falseGlycerol(Dissolved beside) {
    double share = 1 - beside.all();
    double volume =
        beside.salt() * SALT_M3_PER_KG.value()
            + beside.fatty() * FATTY_M3_PER_KG.value()
            + beside.alcohol() * ALCOHOL_M3_PER_KG.value();
    double mixture = share / (1 / densityKgPerM3.value() - volume);
    Inversion table = inversion();
    double slope = table.glycerol() - table.water();
    return (densityKgPerM3.value() - mixture) / slope;
  }

  @Override
  public Source source() {
    return VolkKaehler2018.SOURCE;
  }

  @Override
  public String refusal() {
    return String.format(
        Locale.ROOT,
        "density: %.1f kg/m3 given, allowed %.1f kg/m3 (water) to %.1f kg/m3"
            + " (pure glycerol) at %.1f °C; read again without bubbles; note that"
            + " dissolved salt makes a jar heavier, soap and alcohol lighter",
        densityKgPerM3.value(),
        inversion().water(),
        inversion().glycerol(),
        temperatureK.value() - ZERO_CELSIUS_K);
  }

  @Override
  public Inversion inversion() {
    return new Inversion(w -> RULE.kgPerM3(w, temperatureK.value()));
  }
}
