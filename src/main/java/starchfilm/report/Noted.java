package starchfilm.report;

import static starchfilm.numerics.units.ReaderUnit.CELSIUS;
import static starchfilm.numerics.units.ReaderUnit.GRAM;
import static starchfilm.numerics.units.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.units.ReaderUnit.MINUTE;
import static starchfilm.numerics.units.ReaderUnit.PERCENT;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.Pour;
import starchfilm.casting.Room;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.units.Figures;
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
    Recipe recipe = forecast.trial().recipe();
    Cook cook = recipe.cook();
    Composition composition = forecast.composition();
    Casting casting = forecast.casting();
    Pour pour = casting.pour();
    Room room = casting.room();
    OptionalDouble benchK = casting.benchTemperatureK();
    return List.of(
        kind("starch", RecipeWords.starchKinds(recipe)),
        plasticiser(composition.glycerolPerDryStarch()),
        acidLevel(composition.aceticAcid()),
        sized(
            "dry solids in the paste",
            PERCENT.figure(composition.drySolids()),
            composition.drySolids(),
            Weight.MAIN),
        wetThickness(pour),
        ordered("unevenness", "± " + percent(pour.unevenness()), pour.unevenness()),
        kind("plate", RecipeWords.plate(casting.plate())),
        kind("room", casting.place().name()),
        ordered("air", RoomWords.temperature(room), RoomWords.warmth(room)),
        ordered("humidity", RoomWords.humidity(room), RoomWords.dampness(room)),
        ordered("air speed", RoomWords.speed(room), RoomWords.draught(room)),
        kind("turned or racked", RecipeWords.faces(casting.faces())),
        detail(
            "bench",
            benchK.isPresent() ? CELSIUS.figure(benchK.getAsDouble()) : "as warm as the air",
            benchK),
        grams("starch powder", recipe.starchKg()),
        grams("glycerol as weighed", recipe.glycerol().massKg().value()),
        side("glycerol jar", RecipeWords.jar(recipe.glycerol())),
        vinegar(recipe.vinegar()),
        grams("water", recipe.waterKg().value()),
        grams("salt added", recipe.saltKg().value()),
        grams("other solids", forecast.casting().paste().massKg() * composition.inert()),
        detail(
            "cook",
            "%s min at %s"
                .formatted(
                    MINUTE.whole(cook.durationS().value()),
                    CELSIUS.figure(cook.topTemperatureK().value())),
            cook.topTemperatureK().value()),
        detail("boiled off", GRAM.figure(cook.waterLostKg().value()), cook.waterLostKg().value()),
        sized(
            "paste on a plate",
            GRAM.figure(forecast.pouredKgPerPlate()),
            forecast.pouredKgPerPlate(),
            Weight.SIDE),
        detail("plates poured", Integer.toString(pour.plates()), pour.plates()),
        detail(
            "paste when poured",
            CELSIUS.figure(pour.pasteTemperatureK()),
            pour.pasteTemperatureK()),
        side(
            "used at",
            "%s, %s RH"
                .formatted(
                    CELSIUS.figure(casting.use().temperatureK()),
                    percent(casting.use().relativeHumidity()))));
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

  private static Noted detail(String label, String text, double size) {
    return detail(label, text, OptionalDouble.of(size));
  }

  private static Noted ordered(String label, String text, double size) {
    return new Noted(label, text, OptionalDouble.of(size), Weight.MAIN_WITHOUT_BAR);
  }

  private static Noted sized(String label, String text, double size, Weight weight) {
    return new Noted(label, text, OptionalDouble.of(size), weight);
  }

  private static Noted grams(String label, double kg) {
    return sized(label, kg == 0 ? NONE : GRAM.noted(kg), kg, Weight.SIDE);
  }

  /** A thickness that follows from the grams poured or cooked is not known to four figures. */
  private static Noted wetThickness(Pour pour) {
    double metres = pour.wetThicknessM().value();
    String text =
        pour.weighedKg().isPresent()
            ? MILLIMETRE.figure(metres)
            : Figures.three(MILLIMETRE.of(metres)) + " mm";
    return sized("wet thickness", text, metres, Weight.MAIN);
  }

  private static Noted plasticiser(double level) {
    String label = "glycerol per 100 g dry starch";
    return Double.isInfinite(level)
        ? kind(label, "no starch")
        : sized(label, level == 0 ? NONE : PERCENT.two(level) + " g", level, Weight.MAIN);
  }

  private static Noted acidLevel(double share) {
    String text = share == 0 ? NONE : GRAM.figure(share);
    return sized("acid per kg paste", text, share, Weight.MAIN);
  }

  private static Noted vinegar(VinegarPortion portion) {
    double kg = portion.massKg().value();
    String text = GRAM.noted(kg) + " at " + PERCENT.noted(portion.acidityFraction().value());
    return sized("vinegar", kg == 0 ? NONE : text, kg, Weight.SIDE);
  }

  private static String percent(double ratio) {
    return PERCENT.whole(ratio) + " %";
  }
}
