package starchfilm.report;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Pour;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.report.words.Figures;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;

/**
 * One thing a maker decided or measured, the same label for every trial, so that trials can be laid
 * side by side.
 *
 * @param size its size, to tell more from less; empty for a kind or a name
 */
record Noted(String label, String text, OptionalDouble size, Weight weight) {
  private static final String NONE = "none";

  /** How a row is shown. */
  enum Weight {
    /** Decides what film it becomes: named among the changes, and with a bar if it has a size. */
    MAIN,
    /** Also decides, but its size does not start at nothing: no bar. */
    MAIN_WITHOUT_BAR,
    /** Follows from batch size and the like: with a bar if it has a size. */
    SIDE,
    /** A detail without a bar. */
    SIDE_WITHOUT_BAR
  }

  /**
   * Everything noted of one trial.
   *
   * @return always the same labels in the same order
   */
  static List<Noted> of(TrialForecast forecast) {
    Trial trial = forecast.trial();
    Cook cook = trial.recipe().cook();
    double solids = forecast.composition().drySolids();
    double starchKg = trial.recipe().starches().stream().mapToDouble(p -> p.massKg().value()).sum();
    return List.of(
        kind("starch", RecipeWords.starchKinds(trial.recipe())),
        plasticiser(forecast),
        acidLevel(forecast),
        sized("dry solids in the paste", Figures.two(100 * solids) + " %", solids, Weight.MAIN),
        wetThickness(trial),
        ordered(
            "unevenness",
            "± " + percent(trial.casting().pour().unevenness()),
            trial.casting().pour().unevenness()),
        kind("plate", RecipeWords.plate(trial.casting().plate())),
        kind("room", trial.casting().place().name()),
        ordered(
            "air",
            RoomWords.temperature(trial.casting().room()),
            RoomWords.warmth(trial.casting().room())),
        ordered(
            "humidity",
            RoomWords.humidity(trial.casting().room()),
            RoomWords.dampness(trial.casting().room())),
        ordered(
            "air speed",
            RoomWords.speed(trial.casting().room()),
            RoomWords.draught(trial.casting().room())),
        kind("turned or racked", RecipeWords.faces(trial.casting().faces())),
        detail(
            "bench",
            trial.casting().benchTemperatureK().isPresent()
                ? celsius(trial.casting().benchTemperatureK().getAsDouble())
                : "as warm as the air",
            trial.casting().benchTemperatureK()),
        grams("starch powder", starchKg),
        glycerol(trial.recipe().glycerol()),
        side("glycerol jar", RecipeWords.jar(trial.recipe().glycerol())),
        vinegar(trial.recipe().vinegar()),
        grams("water", trial.recipe().waterKg().value()),
        grams("salt added", trial.recipe().saltKg().value()),
        grams("other solids", forecast.paste().massKg() * forecast.composition().inert()),
        detail(
            "cook",
            Figures.whole(ReaderUnit.MINUTE.of(cook.durationS().value()))
                + " min at "
                + celsius(cook.topTemperatureK().value()),
            OptionalDouble.of(cook.topTemperatureK().value())),
        detail(
            "boiled off",
            ReaderUnit.GRAM.two(cook.waterLostKg().value()) + " g",
            OptionalDouble.of(cook.waterLostKg().value())),
        sized(
            "paste on a plate",
            ReaderUnit.GRAM.two(forecast.pouredKgPerPlate()) + " g",
            forecast.pouredKgPerPlate(),
            Weight.SIDE),
        detail(
            "plates poured",
            Integer.toString(trial.casting().pour().plates()),
            OptionalDouble.of(trial.casting().pour().plates())),
        detail(
            "paste when poured",
            celsius(trial.casting().pour().pasteTemperatureK()),
            OptionalDouble.of(trial.casting().pour().pasteTemperatureK())),
        side(
            "used at",
            celsius(trial.casting().use().temperatureK())
                + ", "
                + percent(trial.casting().use().relativeHumidity())
                + " RH"));
  }

  /**
   * Whether it is worth naming among the changes from one trial to the next.
   *
   * @return true where it decides what film it becomes
   */
  boolean decides() {
    return weight == Weight.MAIN || weight == Weight.MAIN_WITHOUT_BAR;
  }

  /** Whether its size can be stated as a bar from nothing. */
  boolean hasBar() {
    return size.isPresent() && (weight == Weight.MAIN || weight == Weight.SIDE);
  }

  private static Noted kind(String label, String text) {
    return new Noted(label, text, OptionalDouble.empty(), Weight.MAIN);
  }

  private static Noted side(String label, String text) {
    return new Noted(label, text, OptionalDouble.empty(), Weight.SIDE);
  }

  private static Noted detail(String label, String text, OptionalDouble size) {
    return new Noted(label, text, size, Weight.SIDE_WITHOUT_BAR);
  }

  private static Noted ordered(String label, String text, double size) {
    return new Noted(label, text, OptionalDouble.of(size), Weight.MAIN_WITHOUT_BAR);
  }

  private static Noted sized(String label, String text, double size, Weight weight) {
    return new Noted(label, text, OptionalDouble.of(size), weight);
  }

  private static Noted grams(String label, double kg) {
    return sized(label, kg == 0 ? NONE : ReaderUnit.GRAM.noted(kg), kg, Weight.SIDE);
  }

  /** A thickness that follows from the grams poured or cooked is not known to four figures. */
  private static Noted wetThickness(Trial trial) {
    Pour pour = trial.casting().pour();
    double metres = pour.wetThicknessM().value();
    String text =
        pour.weighedKg().isPresent()
            ? ReaderUnit.MILLIMETRE.two(metres) + " mm"
            : Figures.three(ReaderUnit.MILLIMETRE.of(metres)) + " mm";
    return sized("wet thickness", text, metres, Weight.MAIN);
  }

  private static Noted plasticiser(TrialForecast forecast) {
    double level = forecast.composition().glycerolPerDryStarch();
    String label = "glycerol per 100 g dry starch";
    return Double.isInfinite(level)
        ? kind(label, "no starch")
        : sized(label, level == 0 ? NONE : Figures.two(100 * level) + " g", level, Weight.MAIN);
  }

  private static Noted acidLevel(TrialForecast forecast) {
    double share = forecast.composition().aceticAcid();
    return sized(
        "acid per kg paste",
        share == 0 ? NONE : Figures.two(1e3 * share) + " g",
        share,
        Weight.MAIN);
  }

  private static Noted glycerol(GlycerolPortion portion) {
    return grams("glycerol as weighed", portion.massKg().value());
  }

  private static Noted vinegar(VinegarPortion portion) {
    double mass = portion.massKg().value();
    String strength = " at " + Figures.noted(100 * portion.acidityFraction().value()) + " %";
    return sized(
        "vinegar", mass == 0 ? NONE : ReaderUnit.GRAM.noted(mass) + strength, mass, Weight.SIDE);
  }

  private static String celsius(double kelvin) {
    return ReaderUnit.CELSIUS.two(kelvin) + " °C";
  }

  private static String percent(double ratio) {
    return Figures.whole(100 * ratio) + " %";
  }
}
