package starchfilm.ingredient;

import java.util.Locale;
import starchfilm.evidence.Check;
import starchfilm.evidence.Source;
import starchfilm.evidence.ValidRange;

/**
 * The starch powders the program knows, with what a handbook says of each.
 *
 * <p>Source of all figures: Swinkels 1985, Starch/Staerke 37:1; BeMiller and Whistler, Starch:
 * Chemistry and Technology, 3rd ed. 2009; Waterschoot et al. 2015, Starch/Staerke 67:14 (all
 * recalled). To add a kind, add a constant here, its isotherm in {@code sorption}, and its name to
 * the schema of the trial file.
 */
public enum StarchKind {
  /** Normal (dent) corn. */
  CORN("corn", 0.265, 0.115, 0.0087, 64, 69, 75, 0.04, 0.07),
  /** Waxy corn, nearly all amylopectin. */
  WAXY_CORN("waxy corn", 0.01, 0.12, 0.0058, 64, 70, 77, 0.03, 0.05),
  /** High-amylose corn; an open pan does not gelatinise it. */
  HIGH_AMYLOSE_CORN("high-amylose corn", 0.60, 0.125, 0.0087, 68, 95, 118, 0.03, 0.08),
  /** Potato. */
  POTATO("potato", 0.215, 0.175, 0.0144, 59, 63, 68, 0.02, 0.04),
  /** Tapioca (cassava, manioc). */
  TAPIOCA("tapioca", 0.175, 0.125, 0.0087, 62, 68, 74, 0.03, 0.05),
  /** Wheat. */
  WHEAT("wheat", 0.265, 0.12, 0.0058, 54, 61, 66, 0.05, 0.08),
  /** Rice; cultivars differ widely. */
  RICE("rice", 0.20, 0.12, 0.0058, 64, 68, 75, 0.04, 0.06);

  /** Where the figures of this table come from. */
  public static final Source SOURCE =
      new Source(
          "Swinkels 1985, Starch/Staerke 37:1; BeMiller and Whistler 2009, Starch: Chemistry and"
              + " Technology, 3rd ed.; Waterschoot et al. 2015, Starch/Staerke 67:14",
          Check.RECALLED);

  private static final double ZERO_CELSIUS_K = 273.15;

  private final String tradeName;
  private final double amyloseFraction;
  private final double powderMoistureFraction;
  private final double powderMoistureSd;
  private final double onsetC;
  private final double peakC;
  private final double endC;
  private final ValidRange usualCast;

  StarchKind(
      String tradeName,
      double amyloseFraction,
      double powderMoistureFraction,
      double powderMoistureSd,
      double onsetC,
      double peakC,
      double endC,
      double usualCastFrom,
      double usualCastTo) {
    this.tradeName = tradeName;
    this.amyloseFraction = amyloseFraction;
    this.powderMoistureFraction = powderMoistureFraction;
    this.powderMoistureSd = powderMoistureSd;
    this.onsetC = onsetC;
    this.peakC = peakC;
    this.endC = endC;
    this.usualCast = new ValidRange("starch in the paste", usualCastFrom, usualCastTo, "");
  }

  /**
   * The name people write on the bag, as trial files spell it.
   *
   * @return lower case, such as "waxy corn"
   */
  public String tradeName() {
    return tradeName;
  }

  /**
   * Amylose in the dry starch.
   *
   * @return mass fraction of dry starch, 0 to 1
   */
  public double amyloseFraction() {
    return amyloseFraction;
  }

  /**
   * Moisture of the powder out of the bag.
   *
   * @return mass fraction of the powder as weighed (wet basis), the middle of the usual range
   */
  public double powderMoistureFraction() {
    return powderMoistureFraction;
  }

  /**
   * Standard uncertainty of {@link #powderMoistureFraction()}, the usual range read as a rectangle.
   *
   * @return mass fraction, wet basis
   */
  public double powderMoistureSd() {
    return powderMoistureSd;
  }

  /**
   * Where gelatinisation in excess water begins.
   *
   * @return temperature (K)
   */
  public double gelatinisationOnsetK() {
    return onsetC + ZERO_CELSIUS_K;
  }

  /**
   * Where gelatinisation in excess water is fastest.
   *
   * @return temperature (K)
   */
  public double gelatinisationPeakK() {
    return peakC + ZERO_CELSIUS_K;
  }

  /**
   * Where gelatinisation in excess water ends.
   *
   * @return temperature (K)
   */
  public double gelatinisationEndK() {
    return endC + ZERO_CELSIUS_K;
  }

  /**
   * The dry starch per kg paste that people usually cast at.
   *
   * @return mass fractions of the paste
   */
  public ValidRange usualCast() {
    return usualCast;
  }

  @Override
  public String toString() {
    return tradeName.toLowerCase(Locale.ROOT);
  }
}
