package starchfilm.material.sorption;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import starchfilm.material.ingredient.FittedGlycerolActivity;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * The moisture a film of one composition holds at a water activity, and back.
 *
 * <p>{@code X(a) = (1 - s) b(y) [(1 - y) X_GAB(a) + y W(a)] + 0.001 a/(1 - a)}
 *
 * <p>X: kg water per kg dry solids; a: water activity; s: salt in the dry solids; y: glycerol in
 * starch and glycerol; X_GAB: the starch's own isotherm, kinds mixed by dry mass; W: kg water per
 * kg glycerol in the aqueous mixture; b: how much less the two hold together than apart, straight
 * between 1 at y = 0, 0.9 at 0.05, and 0.8 at 0.2 and above. The last term is numerical and has no
 * source: a starch isotherm is bounded at a = 1, and with it {@code a(X)} is smooth and below 1 for
 * every X.
 *
 * <p>Source of the mixing rule: Enrione, Hill and Mitchell 2007, J. Agric. Food Chem. 55:2956 (b at
 * y = 0.05 and 0.2 read; its ends assumed).
 *
 * <p>Valid for: 5 to 60 C, 11 to 90 % relative humidity, up to 60 g glycerol per 100 g dry starch,
 * salt below 2 % of dry solids; {@link #extrapolations} says what is not met. Limits: the salt's
 * own water is left out, and a wet film above 90 % is no longer derived from a solution.
 *
 * <p>{@link #moisture} is the rule itself; {@link #activity} reads a table of its inverse, within
 * 1e-4 in activity and 1 % in slope. Immutable and free for all threads; reading the table
 * allocates nothing.
 */
public final class FilmIsotherm {
  /** The mixing rule's source. */
  public static final Source MIXING_SOURCE =
      new Source(
          "Enrione, Hill and Mitchell 2007, J. Agric. Food Chem. 55:2956 (values below 5 and above"
              + " 20 % glycerol assumed)",
          Check.READ);

  /** The humidities the starches' rows hold for. */
  public static final ValidRange HUMIDITY_RANGE = new ValidRange("relative humidity", 11, 90, "%");

  /** The temperatures the rows and what they do with temperature hold for. */
  public static final ValidRange TEMPERATURE_RANGE = new ValidRange("temperature", 5, 60, "°C");

  /** The plasticiser levels the mixing rule is used for (judged). */
  public static final ValidRange GLYCEROL_RANGE =
      new ValidRange("glycerol per 100 g dry starch", 0, 60, "g");

  /** The salt that may be neglected (judged). */
  public static final ValidRange SALT_RANGE = new ValidRange("salt in the dry solids", 0, 2, "%");

  /** Spread of X between batches and laboratories, as a standard deviation of its log (judged). */
  public static final double SPREAD_OF_LOG = 0.15;

  /** The source of the moisture's change with temperature. */
  public static final Source WARMTH_SOURCE =
      new Source(
          "moisture at a given humidity falls by 0.5 % per kelvin: rounded from"
              + " Perdomo et al. 2009, Carbohydr. Polym. 76:305 (cassava, below 85 %"
              + " relative humidity), Al-Muhtaseb, McMinn and Magee 2004, J. Food Eng."
              + " 61:297 (30 to 60 °C) and Saberi et al. 2016, Foods 5:1 (pea film, 5"
              + " to 40 °C)",
          Check.READ);

  private static final double LOSS_PER_K = 0.005;
  private static final double AT_K = 298.15;

  private static final String RULE = "equilibrium moisture content";
  private static final double NUMERICAL_WATER = 0.001;
  private static final FittedGlycerolActivity GLYCEROL_WATER = new FittedGlycerolActivity();

  private static final double WIDER_FROM = 0.75;
  private static final double WIDEST_AT = 0.95;

  /** Two ions a molecule: {@code 2 M_water/M_NaCl} (kg water per kg salt). */
  private static final double SALT_WATER = 2 * 18.015 / 58.44;

  /** q of the activity, 0.75, whose moisture falls into the middle of the table. */
  private static final double SCALE_Q = 3;

  private final Map<StarchKind, Double> starchWeights = new EnumMap<>(StarchKind.class);
  private final double glycerolWeight;
  private final double glycerolPer100Starch;
  private final double salt;
  private final double inert;
  private final InverseTable inverse;

  private FilmIsotherm(Composition composition) {
    double y = composition.glycerolFractionOfStarchAndGlycerol();
    this.salt = composition.saltFractionOfDry();
    this.inert = composition.inertFractionOfDry();
    this.glycerolPer100Starch = 100 * composition.glycerolPerDryStarch();
    double together = composition.starchAndGlycerolFractionOfDry() * interaction(y);
    this.glycerolWeight = together * y;
    double[] moisture = new double[ActivityNodes.COUNT];
    double[] slope = new double[ActivityNodes.COUNT];
    ActivityNodes.glycerol().addTo(moisture, slope, glycerolWeight);
    for (Map.Entry<StarchKind, Double> share : composition.starchShares().entrySet()) {
      double weight = together * (1 - y) * share.getValue();
      starchWeights.put(share.getKey(), weight);
      ActivityNodes.starch(share.getKey()).addTo(moisture, slope, weight);
    }
    for (int i = 0; i < ActivityNodes.COUNT; i++) {
      moisture[i] += NUMERICAL_WATER * ActivityNodes.q(i);
      slope[i] += NUMERICAL_WATER;
    }
    this.inverse = new InverseTable(moisture, slope, moisture(SCALE_Q / (1 + SCALE_Q)));
  }

  /**
   * The isotherm of a composition.
   *
   * @param composition the paste; only its dry solids count
   * @return its isotherm
   */
  public static FilmIsotherm of(Composition composition) {
    return new FilmIsotherm(composition);
  }

  /**
   * Moisture content at rest.
   *
   * @param activity water activity, the relative humidity at rest (ratio, 0 to below 1)
   * @return X (kg water per kg dry solids)
   * @throws IllegalArgumentException outside that range
   */
  public double moisture(double activity) {
    Refusal.unless(
        activity >= 0 && activity < 1,
        "moisture of the film: water activity",
        activity,
        "0 to below 1 (50 % is 0.5); at 1 a film takes up water without limit");
    double sum = NUMERICAL_WATER * activity / (1 - activity);
    if (glycerolWeight > 0) {
      sum += glycerolWeight * GLYCEROL_WATER.waterKgPerKgGlycerol(activity);
    }
    for (Map.Entry<StarchKind, Double> starch : starchWeights.entrySet()) {
      sum += starch.getValue() * StarchIsotherms.of(starch.getKey()).moisture(activity);
    }
    return sum;
  }

  /**
   * Moisture content at rest in air of a temperature.
   *
   * @param activity water activity, the relative humidity at rest (ratio, 0 to below 1)
   * @param temperatureK of the film (K)
   * @return X (kg water per kg dry solids)
   * @throws IllegalArgumentException outside the range of the activity
   */
  public double moisture(double activity, double temperatureK) {
    return warmth(temperatureK) * moisture(activity);
  }

  /**
   * Returns the factor on the moisture at 25 °C at another temperature: it falls by 0.5 % a kelvin.
   *
   * @param temperatureK of the film (K)
   * @return factor on X at a given activity (ratio)
   */
  public static double warmth(double temperatureK) {
    return 1 - LOSS_PER_K * (temperatureK - AT_K);
  }

  /**
   * Water activity of a film.
   *
   * @param moistureKgPerKgDry X (kg water per kg dry solids, 0 or more); a solver's stray negative
   *     value meets the tangent at 0
   * @return water activity (ratio, 0 to below 1), rising with X
   */
  public double activity(double moistureKgPerKgDry) {
    return inverse.activity(moistureKgPerKgDry);
  }

  /**
   * How the activity rises with moisture: the derivative of {@link #activity}, continuous.
   *
   * @param moistureKgPerKgDry X (kg water per kg dry solids, 0 or more)
   * @return da/dX (kg dry solids per kg water), above 0
   */
  public double activitySlope(double moistureKgPerKgDry) {
    return inverse.activitySlope(moistureKgPerKgDry);
  }

  /**
   * Returns the factor on {@link #SPREAD_OF_LOG} at an activity.
   *
   * <p>1 up to 75 % relative humidity in a film without salt; from there it rises to 2 at 95 %, for
   * the published isotherms part (judged, no source). Above 75 %, where common salt dissolves in
   * the moisture of the air, the water it would hold by Raoult's law, {@code 0.617 s a/(1 - a)},
   * counts as a further spread, for the rule leaves it out. Inert solids count as holding none, and
   * as a further spread what they would hold if they took up half of what the rest does (judged, no
   * source): protein takes up about that, chalk nothing.
   *
   * @param activity water activity (ratio, 0 to below 1)
   * @return factor on the spread (ratio, 1 or more)
   */
  public double bandFactor(double activity) {
    double inertSpread = 0.5 * inert / (1 - inert) / SPREAD_OF_LOG;
    if (activity <= WIDER_FROM) {
      return Math.hypot(1, inertSpread);
    }
    double parting = 1 + Math.min(1, (activity - WIDER_FROM) / (WIDEST_AT - WIDER_FROM));
    double saltWater = salt * SALT_WATER * activity / (1 - activity);
    double saltSpread = saltWater / moisture(activity) / SPREAD_OF_LOG;
    return Math.hypot(Math.hypot(parting, saltSpread), inertSpread);
  }

  /**
   * Lists the ranges of the rule that are not met.
   *
   * @param activity water activity (ratio)
   * @param temperatureK temperature (K)
   * @return one entry a range; empty if all are met
   */
  public List<Extrapolation> extrapolations(double activity, double temperatureK) {
    List<Extrapolation> found = new ArrayList<>();
    addIfOutside(found, HUMIDITY_RANGE, 100 * activity);
    addIfOutside(found, TEMPERATURE_RANGE, temperatureK - ZERO_CELSIUS_K);
    addIfOutside(found, GLYCEROL_RANGE, glycerolPer100Starch);
    addIfOutside(found, SALT_RANGE, 100 * salt);
    return Collections.unmodifiableList(found);
  }

  /**
   * Returns the sources of this composition's isotherm.
   *
   * @return one source a starch kind, then those of the mixing rule and of glycerol
   */
  public List<Source> sources() {
    List<Source> sources = new ArrayList<>();
    starchWeights.keySet().forEach(kind -> sources.add(StarchIsotherms.of(kind).source()));
    sources.add(WARMTH_SOURCE);
    if (glycerolWeight > 0) {
      sources.add(MIXING_SOURCE);
      sources.add(FittedGlycerolActivity.SOURCE);
    }
    return Collections.unmodifiableList(sources);
  }

  private static void addIfOutside(List<Extrapolation> found, ValidRange range, double given) {
    if (!range.contains(given)) {
      found.add(new Extrapolation(RULE, range, given));
    }
  }

  /** b(y), straight between the points of the class comment. */
  private static double interaction(double y) {
    if (y <= 0.05) {
      return 1 - 0.1 * y / 0.05;
    }
    return y <= 0.2 ? 0.9 - 0.1 * (y - 0.05) / 0.15 : 0.8;
  }
}
