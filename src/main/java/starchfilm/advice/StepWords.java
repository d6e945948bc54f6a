package starchfilm.advice;

import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Locale;
import starchfilm.casting.Casting;
import starchfilm.change.ChangeStep;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Ingredient;
import starchfilm.material.recipe.Recipe;

/** A step in a clause, with its figures. */
final class StepWords {
  private StepWords() {}

  /**
   * The step in words.
   *
   * @param step the step
   * @param recipe the recipe of the casting it starts from, for its grams
   */
  static String of(ChangeStep step, Recipe recipe) {
    Casting before = step.before();
    Casting after = step.after();
    return switch (step.change()) {
      case POUR_THINNER, POUR_THICKER ->
          "wet thickness "
              + Told.number(1e3 * step.from())
              + " → "
              + Told.millimetres(step.to())
              + " ("
              + Told.grams(after.pastePerPlateKg())
              + " of paste per plate instead of "
              + Told.grams(before.pastePerPlateKg())
              + ")";
      case LEVEL_THE_PLATE ->
          "a level plate: thin edge and thick spot "
              + Told.percent(step.from())
              + " → "
              + Told.percent(step.to())
              + " from the average";
      case POUR_HOTTER ->
          "paste poured at " + Told.degrees(step.from()) + " → " + Told.celsius(step.to());
      case MORE_GLYCEROL, LESS_GLYCEROL ->
          "glycerol "
              + Told.number(PERCENT_PER_UNIT * step.from())
              + " → "
              + Told.level(step.to())
              + " per 100 g dry starch"
              + fromTheJar(step, recipe);
      case CLEANER_GLYCEROL ->
          "glycerol without salt: salt "
              + Told.percent(before.composition().saltFractionOfDry())
              + " → "
              + Told.percent(after.composition().saltFractionOfDry())
              + " of the dry solids";
      case MORE_WATER, LESS_WATER -> watered(step);
      case LESS_VINEGAR -> step.to() == 0 ? "no vinegar" : "half the vinegar";
      case CLEARER_STARCH ->
          names(after.composition()) + " instead of " + names(before.composition()) + " starch";
      case CALMER_AIR, FAN ->
          "air speed " + Told.number(step.from()) + " → " + Told.number(step.to()) + " m/s";
      case COVER_THE_PLATE -> "a cover ajar: " + humidity(step);
      case DRIER_ROOM -> humidity(step);
      case WARMER_ROOM ->
          "the room "
              + Told.degrees(step.from())
              + " → "
              + Told.celsius(step.to())
              + ", with the moisture it has";
      case ANOTHER_ROOM ->
          "dry it in the " + SetupWords.room(after) + ", instead of the " + SetupWords.room(before);
      case COOK_HOTTER, COOK_COOLER ->
          "top of the cook "
              + Told.number(step.from() - ZERO_CELSIUS_K)
              + " → "
              + Told.number(step.to() - ZERO_CELSIUS_K)
              + " °C";
      case COOK_LONGER, COOK_SHORTER ->
          "cook for "
              + Told.number(step.from() / MINUTE_S)
              + " → "
              + Told.number(step.to() / MINUTE_S)
              + " min";
      case WAIT_LONGER -> "leave it on the plate for longer";
      case KEEP_IT_ON_THE_PLATE -> "leave it on the plate until it is dry, without rack or turning";
      case A_PLATE_THAT_LETS_GO, A_PLATE_THAT_HOLDS_ON ->
          "a plate of "
              + after.plate().material().tradeName()
              + " instead of "
              + before.plate().material().tradeName();
    };
  }

  private static String fromTheJar(ChangeStep step, Recipe recipe) {
    GlycerolPortion portion = recipe.glycerol();
    double purity = portion.stock().glycerolFraction().value();
    double starchKg = step.before().paste().kg(Ingredient.STARCH);
    return purity > 0
        ? " ("
            + Told.grams(step.to() * starchKg / purity)
            + " from the jar for the same starch, instead of "
            + Told.grams(portion.massKg().value())
            + ")"
        : "";
  }

  private static String watered(ChangeStep step) {
    double perStarch =
        step.after().composition().perStarch(Ingredient.WATER)
            - step.before().composition().perStarch(Ingredient.WATER);
    return "dry starch in the paste "
        + Told.number(PERCENT_PER_UNIT * step.from())
        + " → "
        + Told.percent(step.to())
        + " ("
        + Told.grams(Math.abs(perStarch) * step.before().paste().kg(Ingredient.STARCH))
        + (perStarch > 0 ? " more" : " less")
        + " water for the same starch)";
  }

  private static String humidity(ChangeStep step) {
    return String.format(
        Locale.ROOT,
        "humidity over the plate %.0f → %.0f %%",
        PERCENT_PER_UNIT * step.from(),
        PERCENT_PER_UNIT * step.to());
  }

  private static String names(Composition paste) {
    return String.join(
        " and ", paste.starchShares().keySet().stream().map(StarchKind::tradeName).toList());
  }
}
