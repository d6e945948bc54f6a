package starchfilm.drying;

import starchfilm.casting.Casting;
import starchfilm.casting.DryingLimits;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;
import starchfilm.material.wetfilm.FilmMaterial;

/**
 * A drying case with the paste's tables, which all of its likely cases share. Immutable; shared by
 * threads.
 *
 * @param drying the case
 * @param material the paste's tables
 */
record PreparedCase(Casting drying, FilmMaterial material) {
  static PreparedCase of(Casting drying) {
    DryingLimits.require(drying);
    return new PreparedCase(
        drying, FilmMaterial.of(drying.composition(), drying.composition().waterKgPerKgDry()));
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
        : FilmMaterial.of(own, moisture);
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
