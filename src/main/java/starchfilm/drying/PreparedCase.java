package starchfilm.drying;

import static starchfilm.numerics.units.Units.DAY_S;

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
 * activity it comes to rest at. Immutable; shared by threads.
 *
 * @param drying the case
 * @param layers the temperatures of its tables
 * @param material the paste's tables
 * @param resting the activity at rest
 * @param fineness how finely it is solved
 */
record PreparedCase(
    Casting drying,
    TemperatureLayers layers,
    FilmMaterial material,
    RestingActivity resting,
    Fineness fineness) {
  /** How far evaporation may cool a film below the air (K); a wet bulb in dry heat is the most. */
  private static final double MOST_COOLING_K = 12;

  private static final double MARGIN_K = 4;

  static PreparedCase of(Casting drying, double horizonS) {
    return of(drying, horizonS, Fineness.FORECAST);
  }

  static PreparedCase of(Casting drying, double horizonS, Fineness fineness) {
    DryingLimits.require(drying);
    double coldest = Double.POSITIVE_INFINITY;
    double warmest = drying.pour().pasteTemperatureK();
    // A room is looked at over its first three days; beyond, the layers extrapolate mildly.
    for (double time = 0; time <= 3 * DAY_S; time += DAY_S / 24) {
      double air = drying.room().at(time).temperatureK();
      coldest = Math.min(coldest, air);
      warmest = Math.max(warmest, air);
    }
    if (drying.benchTemperatureK().isPresent()) {
      warmest = Math.max(warmest, drying.benchTemperatureK().getAsDouble());
    }
    TemperatureLayers layers = new TemperatureLayers(coldest - MOST_COOLING_K, warmest + MARGIN_K);
    return new PreparedCase(
        drying,
        layers,
        FilmMaterial.of(drying.composition(), layers),
        RestingActivity.in(drying, horizonS),
        fineness);
  }

  /** The tables of one likely case: its own where its glycerol differs, else the shared ones. */
  FilmMaterial material(ParameterSample deviations) {
    double plasticiser = deviations.multiplier(UncertainParameter.PLASTICISER);
    if (plasticiser == 1) {
      return material;
    }
    Composition changed = drying.composition().times(plasticiser, Ingredient.GLYCEROL);
    return FilmMaterial.of(changed, layers);
  }
}
