package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MINUTE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

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
import starchfilm.numerics.figures.Figures;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;

/**
 * One thing a maker decided or measured, the same label for every trial, so that trials can be laid
 * side by side.
 *
 * @param bar its size from nothing, to tell more from less by a bar; NaN for a kind or a name, and
 *     for what does not start at nothing
 * @param decides whether it decides what film it becomes, and so is named among the changes
 */
record ComparedAttribute(String label, String text, double bar, boolean decides) {
  private static final String NONE = "none";

  /**
   * Everything noted of one trial.
   *
   * @return always the same labels in the same order
   */
  static List<ComparedAttribute> of(TrialForecast forecast) {
    Recipe recipe = forecast.trial().recipe();
    Cook cook = recipe.cook();
    Composition composition = forecast.composition();
    Casting casting = forecast.casting();
    Pour pour = casting.pour();
    Room room = casting.room();
    OptionalDouble benchK = casting.benchTemperatureK();
    return List.of(
        deciding("starch", RecipeWords.starchKinds(recipe)),
        plasticiser(composition.glycerolPerDryStarch()),
        acidLevel(composition.aceticAcid()),
        new ComparedAttribute(
            "dry solids in the paste",
            PERCENT.figure(composition.drySolids()),
            composition.drySolids(),
            true),
        wetThickness(pour),
        deciding("unevenness", "± " + percent(pour.unevenness())),
        deciding("plate", RecipeWords.plate(casting.plate())),
        deciding("room", casting.place().name()),
        deciding("air", RoomWords.temperature(room)),
        deciding("humidity", RoomWords.humidity(room)),
        deciding("air speed", RoomWords.speed(room)),
        deciding("turned or racked", RecipeWords.faces(casting.faces())),
        further(
            "bench",
            benchK.isPresent() ? CELSIUS.figure(benchK.getAsDouble()) : "as warm as the air"),
        grams("starch powder", recipe.starchKg()),
        grams("glycerol as weighed", recipe.glycerol().massKg().value()),
        further("glycerol jar", RecipeWords.jar(recipe.glycerol())),
        vinegar(recipe.vinegar()),
        grams("water", recipe.waterKg().value()),
        grams("salt added", recipe.saltKg().value()),
        grams("other solids", casting.paste().massKg() * composition.inert()),
        further(
            "cook",
            "%s min at %s"
                .formatted(
                    MINUTE.whole(cook.durationS().value()),
                    CELSIUS.figure(cook.topTemperatureK().value()))),
        further("boiled off", GRAM.figure(cook.waterLostKg().value())),
        new ComparedAttribute(
            "paste on a plate",
            GRAM.figure(forecast.pouredKgPerPlate()),
            forecast.pouredKgPerPlate(),
            false),
        further("plates poured", Integer.toString(pour.plates())),
        further("paste when poured", CELSIUS.figure(pour.pasteTemperatureK())),
        further(
            "used at",
            "%s, %s RH"
                .formatted(
                    CELSIUS.figure(casting.use().temperatureK()),
                    percent(casting.use().relativeHumidity()))));
  }

  private static ComparedAttribute deciding(String label, String text) {
    return new ComparedAttribute(label, text, Double.NaN, true);
  }

  private static ComparedAttribute further(String label, String text) {
    return new ComparedAttribute(label, text, Double.NaN, false);
  }

  private static ComparedAttribute grams(String label, double kg) {
    return new ComparedAttribute(label, kg == 0 ? NONE : GRAM.noted(kg), kg, false);
  }

  /** A thickness that follows from the grams poured or cooked is not known to four figures. */
  private static ComparedAttribute wetThickness(Pour pour) {
    double metres = pour.wetThicknessM().value();
    String text =
        pour.weighedKg().isPresent()
            ? MILLIMETRE.figure(metres)
            : Figures.three(MILLIMETRE.of(metres)) + " mm";
    return new ComparedAttribute("wet thickness", text, metres, true);
  }

  private static ComparedAttribute plasticiser(double level) {
    String text = level == 0 ? NONE : PERCENT.two(level) + " g";
    return new ComparedAttribute("glycerol per 100 g dry starch", text, level, true);
  }

  private static ComparedAttribute acidLevel(double share) {
    String text = share == 0 ? NONE : GRAM.figure(share);
    return new ComparedAttribute("acid per kg paste", text, share, true);
  }

  private static ComparedAttribute vinegar(VinegarPortion portion) {
    double kg = portion.massKg().value();
    String text = GRAM.noted(kg) + " at " + PERCENT.noted(portion.acidityFraction().value());
    return new ComparedAttribute("vinegar", kg == 0 ? NONE : text, kg, false);
  }

  private static String percent(double ratio) {
    return PERCENT.whole(ratio) + " %";
  }
}
