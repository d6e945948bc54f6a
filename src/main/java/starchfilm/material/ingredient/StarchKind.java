package starchfilm.material.ingredient;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.OptionalDouble;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;
import starchfilm.numerics.units.Named;

/**
 * The starch powders the program knows, with what a handbook says of each.
 *
 * <p>Gelatinisation figures hold in excess water; glycerol in the usual 1 to 3 % raises them by
 * about 1 C. To add a kind, add a constant here, its isotherm in {@code sorption}, and its name to
 * the schema of the trial file.
 *
 * <p>Source of all figures: {@link #SOURCE} (recalled), but for the gelatinisation range of rice,
 * which was read (eleven cultivars: onset 56 to 71, peak 61 to 75, end 69 to 82 C).
 */
public enum StarchKind implements Named {
  /** Normal (dent) corn. */
  CORN(
      share(25, 28),
      share(10, 13),
      new Gelatinisation(64, 69, 75),
      cast(4, 7),
      Estimate.between(460, 660),
      OptionalDouble.of(0.044),
      CookGuide.openPan(90, 95, 15, 20, "Stir all the time: it scorches on the bottom.")),
  /** Waxy corn, nearly all amylopectin. */
  WAXY_CORN(
      share(0, 2),
      share(11, 13),
      new Gelatinisation(64, 70, 77),
      cast(3, 5),
      Estimate.between(450, 660),
      OptionalDouble.of(0.016),
      CookGuide.openPan(
          90, 90, 10, 15, "Turns stringy and clear; longer cooking only thins the paste.")),
  /** High-amylose corn; an open pan does not gelatinise it. */
  HIGH_AMYLOSE_CORN(
      share(50, 70),
      share(11, 14),
      new Gelatinisation(68, 95, 117.5),
      cast(3, 8),
      Estimate.between(450, 660),
      OptionalDouble.empty(),
      new CookGuide(
          new ValidRange("top temperature", 120, 140, "°C"),
          new ValidRange("time at the top temperature", 15, 30, "min"),
          false,
          "An open pan does not gelatinise it; it needs 120 to 140 °C under pressure.")),
  /** Potato. */
  POTATO(
      share(20, 23),
      share(15, 20),
      new Gelatinisation(59, 63, 68),
      cast(2, 4),
      Estimate.between(600, 820),
      OptionalDouble.of(0.001),
      CookGuide.openPan(
          80, 90, 10, 10, "Thickens at once and strongly; stir gently, hard stirring thins it.")),
  /** Tapioca (cassava, manioc). */
  TAPIOCA(
      share(16, 19),
      share(11, 14),
      new Gelatinisation(62, 68, 74),
      cast(3, 5),
      Estimate.between(480, 680),
      OptionalDouble.of(0.014),
      CookGuide.openPan(85, 90, 10, 15, "Turns clear and stringy when it is done.")),
  /** Wheat. */
  WHEAT(
      share(25, 28),
      share(11, 13),
      new Gelatinisation(54, 61, 66),
      cast(5, 8),
      Estimate.between(450, 650),
      OptionalDouble.of(0.05),
      CookGuide.openPan(90, 95, 15, 20, "Stays cloudy when it is done.")),
  /** Rice; cultivars differ widely. */
  RICE(
      share(15, 25),
      share(11, 13),
      new Gelatinisation(63.5, 68, 75.5),
      cast(4, 6),
      Estimate.between(400, 680),
      OptionalDouble.of(0.05),
      CookGuide.openPan(
          90, 90, 15, 15, "Cultivars begin anywhere from 56 to 71 °C; hold the full time."));

  /** Where the figures of this table come from. */
  public static final Source SOURCE =
      new Source(
          "Swinkels 1985, Starch/Staerke 37:1; BeMiller and Whistler 2009, Starch: Chemistry and"
              + " Technology, 3rd ed.; Waterschoot et al. 2015, Starch/Staerke 67:14",
          Check.RECALLED);

  private final Estimate amylose;
  private final Estimate powderMoisture;
  private final Gelatinisation gelatinisation;
  private final ValidRange usualCast;
  private final Estimate bulkDensity;
  private final OptionalDouble criticalConcentration;
  private final CookGuide cookGuide;

  StarchKind(
      Estimate amylose,
      Estimate powderMoisture,
      Gelatinisation gelatinisation,
      ValidRange usualCast,
      Estimate bulkDensity,
      OptionalDouble criticalConcentration,
      CookGuide cookGuide) {
    this.amylose = amylose;
    this.powderMoisture = powderMoisture;
    this.gelatinisation = gelatinisation;
    this.usualCast = usualCast;
    this.bulkDensity = bulkDensity;
    this.criticalConcentration = criticalConcentration;
    this.cookGuide = cookGuide;
  }

  /**
   * Amylose in the dry starch.
   *
   * @return mass fraction of dry starch, 0 to 1, the middle of the usual range
   */
  public double amyloseFraction() {
    return amylose.value();
  }

  /**
   * Moisture of the powder out of the bag, the usual range read as a rectangle.
   *
   * @return mass fraction of the powder as weighed (wet basis)
   */
  public Estimate powderMoisture() {
    return powderMoisture;
  }

  /**
   * Where gelatinisation in excess water begins.
   *
   * @return temperature (K)
   */
  public double gelatinisationOnsetK() {
    return gelatinisation.onsetC() + ZERO_CELSIUS_K;
  }

  /**
   * Where gelatinisation in excess water is fastest.
   *
   * @return temperature (K)
   */
  public double gelatinisationPeakK() {
    return gelatinisation.peakC() + ZERO_CELSIUS_K;
  }

  /**
   * Where gelatinisation in excess water ends.
   *
   * @return temperature (K)
   */
  public double gelatinisationEndK() {
    return gelatinisation.endC() + ZERO_CELSIUS_K;
  }

  /**
   * The dry starch per kg paste that people usually cast at.
   *
   * @return mass fractions of the paste
   */
  public ValidRange usualCast() {
    return usualCast;
  }

  /**
   * The powder in a cup or spoon, from loose to shaken down.
   *
   * <p>Corn: Rowe, Sheskey and Quinn 2009, Handbook of Pharmaceutical Excipients, 6th ed., starch:
   * bulk 0.462, tapped 0.658 g/cm3 (recalled). The others: common practice, no source.
   *
   * @return kg/m3
   */
  public Estimate bulkDensityKgPerM3() {
    return bulkDensity;
  }

  /**
   * The concentration at which the swollen granules just fill the liquid at 95 C: below it they
   * settle, far above it the paste does not level.
   *
   * @return kg dry starch per kg paste; empty where the granules hardly swell at 95 C
   */
  public OptionalDouble criticalConcentration() {
    return criticalConcentration;
  }

  /**
   * How to cook it.
   *
   * @return temperatures, times and a remark
   */
  public CookGuide cookGuide() {
    return cookGuide;
  }

  @Override
  public String tradeName() {
    return this == HIGH_AMYLOSE_CORN ? "high-amylose corn" : Named.super.tradeName();
  }

  @Override
  public String toString() {
    return tradeName();
  }

  /** Mass fractions between which the figures of a kind lie. */
  private static Estimate share(double fromPercent, double toPercent) {
    return Estimate.between(fromPercent / 100, toPercent / 100);
  }

  private static ValidRange cast(double fromPercent, double toPercent) {
    return new ValidRange("starch in the paste", fromPercent / 100, toPercent / 100, "");
  }

  /** Onset, peak and end (C). */
  private record Gelatinisation(double onsetC, double peakC, double endC) {}
}
