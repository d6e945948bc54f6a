package starchfilm.advice;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.METRE_PER_SECOND;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MINUTE;
import static starchfilm.numerics.figures.ReaderUnit.NEWTON;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;
import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.Casting;
import starchfilm.casting.FaceChange;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;
import starchfilm.film.PasteBody;
import starchfilm.film.PlasticiserWindow;
import starchfilm.material.air.WagnerPruss1993;
import starchfilm.material.ingredient.CookGuide;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;

/**
 * What the table of rules and the sentences of advice may call by name: a figure of a plate and of
 * its forecast, in SI units, and how it is worded.
 */
enum AdviceFigure {
  // In the pot.
  GLYCEROL(scene -> Setting.GLYCEROL.of(scene.setup()), AdviceFigure::level),
  BRITTLE_BELOW(
      scene -> PlasticiserWindow.cracksBelow(scene.driestHumidity()), AdviceFigure::level),
  ABOVE_BRITTLE(scene -> GLYCEROL.of(scene) - BRITTLE_BELOW.of(scene), AdviceFigure::level),
  TACKY_ABOVE(scene -> PlasticiserWindow.tackyAbove(scene.dampestHumidity()), AdviceFigure::level),
  ABOVE_TACKY(scene -> GLYCEROL.of(scene) - TACKY_ABOVE.of(scene), AdviceFigure::level),
  TO_TACKY(
      scene -> Math.max(AdviceFigure.LEAST, GLYCEROL.of(scene)) / TACKY_ABOVE.of(scene),
      Figures::brief),
  /** Grams from the jar for the starch that was weighed; infinite for a jar without glycerol. */
  FROM_THE_JAR(
      scene ->
          GLYCEROL.of(scene)
              * starchKg(scene)
              / scene.trial().recipe().glycerol().stock().glycerolFraction().value(),
      kg -> Double.isFinite(kg) ? grams(kg) : "an unknown mass"),
  SALT(scene -> scene.setup().composition().saltFractionOfDry(), PERCENT::brief),
  ACID(scene -> Setting.VINEGAR.of(scene.setup()), AdviceFigure::level),
  VINEGAR_LEFT(ACID::of, left -> left == 0 ? "no vinegar" : "half the vinegar"),
  STARCH_IN_PASTE(scene -> scene.setup().composition().dryStarch(), PERCENT::brief),
  /** Water for the starch that was weighed. */
  WATER(scene -> Setting.WATER.of(scene.setup()) * starchKg(scene), AdviceFigure::grams),
  LEVELS_UP_TO(scene -> body(scene).levelsUpTo(), PERCENT::brief),
  CAST_UP_TO(scene -> body(scene).castUpTo(), PERCENT::brief),
  TO_LEVELLING(scene -> STARCH_IN_PASTE.of(scene) / LEVELS_UP_TO.of(scene), PERCENT::brief),
  SETTLES_BELOW(scene -> body(scene).settlesBelow(), PERCENT::brief),
  TO_SETTLING(scene -> SETTLES_BELOW.of(scene) / STARCH_IN_PASTE.of(scene), PERCENT::brief),
  OPAQUE_SHARE(AdviceFigure::opaqueShare, PERCENT::brief),
  /** Nobody notes it. */
  STIRRING(scene -> "unknown"),
  STARCHES(scene -> FigureWords.starches(scene.setup())),

  // At the stove.
  COOK_TEMPERATURE(scene -> Setting.COOK_TEMPERATURE.of(scene.setup()), CELSIUS::brief),
  GELATINISED_AT(scene -> scene.setup().composition().gelatinisedAtK(), CELSIUS::brief),
  COOKED_FROM(
      scene -> guide(scene, guide -> guide.topCelsius().min()) + ZERO_CELSIUS_K, CELSIUS::brief),
  COOKED_UP_TO(
      scene -> guide(scene, guide -> guide.topCelsius().max()) + ZERO_CELSIUS_K, CELSIUS::brief),
  /** How far short of the guide, over what lies between the guide and granules that stay whole. */
  UNDERCOOKED(
      scene ->
          (COOKED_FROM.of(scene) - COOK_TEMPERATURE.of(scene))
              / (COOKED_FROM.of(scene) - GELATINISED_AT.of(scene)),
      PERCENT::brief),
  OVERHEATED(scene -> COOK_TEMPERATURE.of(scene) - COOKED_UP_TO.of(scene), Figures::brief),
  COOK_TIME(scene -> Setting.COOK_TIME.of(scene.setup()), MINUTE::brief),
  LEAST_COOK_TIME(
      scene -> MINUTE_S * guide(scene, guide -> guide.holdMinutes().min()), MINUTE::brief),
  MOST_COOK_TIME(
      scene -> MINUTE_S * guide(scene, guide -> guide.holdMinutes().max()), MINUTE::brief),
  TO_LEAST_COOK(scene -> COOK_TIME.of(scene) / LEAST_COOK_TIME.of(scene), PERCENT::brief),
  TO_MOST_COOK(scene -> COOK_TIME.of(scene) / MOST_COOK_TIME.of(scene), PERCENT::brief),
  STRENGTH_LEFT(scene -> scene.outlook().film().acid().strengthFactor().middle(), PERCENT::brief),

  // The pour.
  WET_THICKNESS(scene -> scene.setup().wetThicknessM(), MILLIMETRE::brief),
  DRY_THICKNESS(scene -> film(scene).dryThicknessM().middle(), MICROMETRE::brief),
  UNEVENNESS(scene -> scene.setup().pour().unevenness(), PERCENT::brief),
  THIN_EDGE(scene -> DRY_THICKNESS.of(scene) * (1 - UNEVENNESS.of(scene)), MICROMETRE::brief),
  PASTE_PER_PLATE(scene -> scene.setup().pastePerPlateKg(), AdviceFigure::grams),
  PASTE_TEMPERATURE(scene -> scene.setup().pour().pasteTemperatureK(), CELSIUS::brief),
  ON_THE_PLATE(scene -> onThePlateK(scene.setup()), CELSIUS::brief),
  PLATE(scene -> FigureWords.plate(scene.setup().plate())),
  MATERIAL(scene -> FigureWords.material(material(scene))),
  GRIP(scene -> material(scene).grip(), FigureWords::manner),
  /** Film may come off before it is dry (judged). */
  SLIPPERY(scene -> GRIP.of(scene) == 0 ? 0.6 : 0, Figures::brief),
  FACES(scene -> FaceChange.words(scene.setup().faces(), "no")),

  // The room and the air of use.
  AIR_TEMPERATURE(scene -> scene.meanAir().temperatureK(), CELSIUS::brief),
  HUMIDITY(scene -> scene.meanAir().relativeHumidity(), PERCENT::brief),
  AIR_SPEED(scene -> scene.meanAir().speedMPerS(), METRE_PER_SECOND::brief),
  ROOM(scene -> scene.setup().place().name() + ", " + FigureWords.air(scene.meanAir())),
  DRIEST_HUMIDITY(FaultContext::driestHumidity, PERCENT::brief),
  DAMPEST_HUMIDITY(FaultContext::dampestHumidity, PERCENT::brief),
  /** How much vapour the air could take up (Pa). */
  ROOM_FOR_VAPOUR(
      scene -> roomForVapourPa(AIR_TEMPERATURE.of(scene), HUMIDITY.of(scene)), Figures::brief),
  OF_AN_ORDINARY_ROOM(
      scene ->
          ROOM_FOR_VAPOUR.of(scene)
              / roomForVapourPa(PutRight.ORDINARY_K, PutRight.ORDINARY_HUMIDITY),
      PERCENT::brief),
  /** Water that leaves on average (kg per h and m2). */
  PACE(AdviceFigure::paceKgPerM2H, GRAM::brief),
  USE(scene -> FigureWords.use(scene.setup())),

  // As it was looked at.
  TIME_SEEN(scene -> scene.seenAtS().orElseThrow(), Spans::of),
  DRY_HERE(scene -> scene.outlook().timeS(scene.spot(), Milestone.DRY_THROUGH), Spans::of),
  DRY_EDGE(scene -> dryS(scene, Spot.THIN_EDGE), Spans::of),
  DRY_MIDDLE(scene -> dryS(scene, Spot.THICK_SPOT), Spans::of),
  /** Share of the drying time for which the thin edge is dry and the thick spot is not. */
  EDGE_AHEAD(
      scene -> Math.max(AdviceFigure.LEAST, 1 - DRY_EDGE.of(scene) / DRY_MIDDLE.of(scene)),
      PERCENT::brief),
  TIMES_TO_DRY(scene -> DRY_HERE.of(scene) / TIME_SEEN.of(scene), Figures::brief),
  TIMES_TO_PEEL(
      scene -> scene.outlook().timeS(scene.spot(), Milestone.PEELABLE) / TIME_SEEN.of(scene),
      Figures::brief),
  DRY_BY_THEN(scene -> FigureWords.lateness(scene, Milestone.DRY_THROUGH, "dry through")),
  PEELABLE_BY_THEN(scene -> FigureWords.lateness(scene, Milestone.PEELABLE, "peelable")),
  /** How much too soon a plate was looked at that dries within an ordinary time. */
  IMPATIENCE(AdviceFigure::impatience, PERCENT::brief),
  FIRM(scene -> scene.outlook().timeS(Spot.THICK_SPOT, Milestone.PEELABLE), Spans::of),
  TO_FIRM_WHEN_SEEN(scene -> FIRM.of(scene) / TIME_SEEN.of(scene), Figures::brief),
  FIRM_WHEN_SEEN(scene -> FigureWords.firmBy(scene, TIME_SEEN.of(scene))),
  /** Infinite for a plate that stayed as it was until the fault was seen. */
  TIME_MOVED(AdviceFigure::movedS, Spans::of),
  TO_FIRM_WHEN_MOVED(scene -> FIRM.of(scene) / TIME_MOVED.of(scene), Figures::brief),
  FIRM_WHEN_MOVED(scene -> FigureWords.firmBy(scene, TIME_MOVED.of(scene))),
  AGE(scene -> scene.fault().seenAtS().orElseThrow() - dryS(scene, Spot.NOMINAL), Spans::of),

  // The film.
  CRACK_RATIO(scene -> scene.outlook().risks().crack().energyOverToughness(), Figures::brief),
  CRACKS_FROM(scene -> scene.outlook().risks().crack().criticalDryThicknessM(), MICROMETRE::brief),
  THICK_SPOT(scene -> scene.outlook().risks().crack().dryThicknessM(), MICROMETRE::brief),
  MOULD_HOURS(scene -> scene.outlook().risks().mould().weightedHours(), Figures::brief),
  MOULD_SHOWS(
      scene -> scene.outlook().risks().mould().growthFromS(),
      from -> Double.isInfinite(from) ? "" : "; growth may show from " + Spans.of(from) + " on"),
  STRETCH(
      scene ->
          scene.outlook().stretchAtRest(scene.driestHumidity(), scene.setup().use().temperatureK()),
      PERCENT::brief),
  /** A stretch at break of 10 %, where film snaps (judged), over the film's own. */
  TO_SNAPPING(scene -> 0.10 / STRETCH.of(scene), Figures::brief),
  /** What a strip 1 cm wide from the thin edge bears (N). */
  STRIP_LOAD(
      scene -> film(scene).tensileStrengthPa().middle() * THIN_EDGE.of(scene) * 0.01,
      NEWTON::brief),
  /** A load of 1 N over what that strip bears. */
  TO_TEARING(scene -> 1 / STRIP_LOAD.of(scene), Figures::brief);

  private static final Set<StarchKind> CLEAR =
      EnumSet.of(StarchKind.POTATO, StarchKind.TAPIOCA, StarchKind.WAXY_CORN);

  /**
   * Share of the time: where the middle case is ready by then, 9 in 10 plates are ready in time;
   * judged.
   */
  private static final double SURELY = 0.68;

  /** Up to here a plate dries as fast as people expect; from the other on it is slow; judged. */
  private static final double ORDINARY_DRYING_S = 2.5 * DAY_S;

  private static final double SLOW_DRYING_S = 5 * DAY_S;

  /** Specific heat of a paste that is mostly water (J/(kg K)); of water, any steam table. */
  private static final double PASTE_J_PER_KG_K = 4_000;

  /** The least that a figure is stated by its logarithm. */
  private static final double LEAST = 1e-3;

  private final ToDoubleFunction<FaultContext> value;
  private final Function<FaultContext, String> words;

  AdviceFigure(ToDoubleFunction<FaultContext> value, DoubleFunction<String> told) {
    this.value = value;
    this.words = scene -> told.apply(value.applyAsDouble(scene));
  }

  AdviceFigure(Function<FaultContext, String> words) {
    this.value =
        scene -> {
          throw new IllegalStateException(name() + " is no figure but words");
        };
    this.words = words;
  }

  /** The figure, in its SI unit. */
  double of(FaultContext scene) {
    return value.applyAsDouble(scene);
  }

  /** The figure as it is written, with its unit. */
  String words(FaultContext scene) {
    return words.apply(scene);
  }

  /** The figure that the table calls by a name, such as "wet thickness". */
  static AdviceFigure called(String name) {
    return valueOf(name.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  /** A plasticiser level in grams to a hundred grams of dry starch, without the rest. */
  static String level(double glycerolPerStarch) {
    return Figures.brief(PERCENT.of(glycerolPerStarch)) + " g";
  }

  /** Weighed grams are known better than to two figures. */
  static String grams(double kg) {
    return Figures.grams(kg) + " g";
  }

  private static double starchKg(FaultContext scene) {
    return scene.trial().casting().paste().kg(Ingredient.STARCH);
  }

  private static PasteBody body(FaultContext scene) {
    return PasteBody.of(scene.setup().composition());
  }

  /** By Swinkels 1985, Starch/Staerke 37:1 (recalled), which kinds give clear pastes. */
  private static double opaqueShare(FaultContext scene) {
    return scene.setup().composition().starchShares().entrySet().stream()
        .filter(share -> !CLEAR.contains(share.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  private static double most(FaultContext scene, ToDoubleFunction<StarchKind> figure) {
    return scene.setup().composition().most(figure);
  }

  private static double guide(FaultContext scene, ToDoubleFunction<CookGuide> figure) {
    return most(scene, kind -> figure.applyAsDouble(kind.cookGuide()));
  }

  private static FilmForecast film(FaultContext scene) {
    return scene.outlook().film();
  }

  /** Paste and plate mixed, the plate as warm as the room. */
  private static double onThePlateK(Casting setup) {
    double film =
        setup.wetThicknessM() * setup.composition().pasteDensityKgPerM3() * PASTE_J_PER_KG_K;
    double plate = setup.plate().heatCapacityJPerM2K();
    double airK = setup.room().at(0).temperatureK();
    return (film * setup.pour().pasteTemperatureK() + plate * airK) / (film + plate);
  }

  private static PlateMaterial material(FaultContext scene) {
    return scene.setup().plate().material();
  }

  private static double roomForVapourPa(double kelvin, double relativeHumidity) {
    return (1 - relativeHumidity) * new WagnerPruss1993().pa(kelvin);
  }

  private static double paceKgPerM2H(FaultContext scene) {
    Casting setup = scene.setup();
    double waterKgPerM2 =
        setup.wetThicknessM()
            * setup.composition().pasteDensityKgPerM3()
            * setup.composition().water();
    return waterKgPerM2 / (dryS(scene, Spot.NOMINAL) / HOUR_S);
  }

  private static double dryS(FaultContext scene, Spot spot) {
    return scene.outlook().timeS(spot, Milestone.DRY_THROUGH);
  }

  private static double impatience(FaultContext scene) {
    double dry = DRY_HERE.of(scene);
    double early = (dry / TIME_SEEN.of(scene) - SURELY) / (1 - SURELY);
    return Math.min(
        Math.min(1, early), (SLOW_DRYING_S - dry) / (SLOW_DRYING_S - ORDINARY_DRYING_S));
  }

  private static double movedS(FaultContext scene) {
    double movedS =
        scene.setup().faces().stream()
            .mapToDouble(FaceChange::timeS)
            .findFirst()
            .orElse(Double.POSITIVE_INFINITY);
    return scene.fault().seenAtS().orElse(movedS) < movedS ? Double.POSITIVE_INFINITY : movedS;
  }
}
