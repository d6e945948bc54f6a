package starchfilm.drying;

import starchfilm.casting.Casting;
import starchfilm.casting.DryingLimits;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;
import starchfilm.material.wetfilm.FilmMaterial;
import starchfilm.material.wetfilm.TemperatureLayers;

/**
 * A drying case with everything that all of its likely cases share: the paste's tables and the
 * temperatures they span. Immutable; shared by threads.
 *
 * @param drying the case
 * @param layers the temperatures of its tables
 * @param material the paste's tables
 */
record PreparedCase(Casting drying, TemperatureLayers layers, FilmMaterial material) {
  /** How far evaporation may cool a film below the air (K); a wet bulb in dry heat is the most. */
  private static final double MOST_COOLING_K = 12;

  private static final double MARGIN_K = 4;

  static PreparedCase of(Casting drying) {
    DryingLimits.require(drying);
    double warmest = Math.max(drying.pour().pasteTemperatureK(), drying.room().warmestK());
    double coolest = drying.room().coolestK();
    if (drying.benchTemperatureK().isPresent()) {
      warmest = Math.max(warmest, drying.benchTemperatureK().getAsDouble());
      coolest = Math.min(coolest, drying.benchTemperatureK().getAsDouble());
    }
    TemperatureLayers layers = new TemperatureLayers(coolest - MOST_COOLING_K, warmest + MARGIN_K);
    return new PreparedCase(
        drying,
        layers,
        FilmMaterial.of(drying.composition(), layers, drying.composition().waterKgPerKgDry()));
  }

  /**
   * The tables of one likely case: its own where its glycerol differs or it is far wetter, else the
   * shared ones.
   */
  FilmMaterial material(ParameterSample deviations) {
    double plasticiser = deviations.multiplier(UncertainParameter.PLASTICISER);
    Composition own =
        plasticiser == 1
            ? drying.composition()
            : drying.composition().times(plasticiser, Ingredient.GLYCEROL);
    double moisture = startMoisture(own, deviations);
    return plasticiser == 1 && moisture <= material.wettest()
        ? material
        : FilmMaterial.of(own, layers, moisture);
  }

  /**
   * The moisture of the fresh paste in one likely case (kg/kg). What the dry solids s deviate by
   * goes onto the logarithm of {@code s/(1 - s)}, which is the same for small deviations and never
   * leaves more solids than paste: {@code X = X_0 exp[-d/(1 - s)]}.
   */
  static double startMoisture(Composition composition, ParameterSample deviations) {
    double solids = composition.drySolids();
    return (1 - solids)
        / solids
        * Math.exp(-deviations.of(UncertainParameter.SOLIDS) / (1 - solids));
  }
}
