package starchfilm.material.wetfilm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

/** Small facts of pastes, by hand. */
class WetFilmFactsTest {
  /**
   * 10 parts starch and 3 of glycerol: (10 * 1550 + 3 * 2430)/13 J/(kg K); salt counts as starch.
   */
  @Test
  void solidsHeatIsMixedByMass() {
    assertThat(SolidsHeat.jPerKgK(Castings.paste(0.1, 0.3)))
        .isCloseTo((10 * 1550 + 3 * 2430) / 13.0, within(1e-9));
    Composition salty =
        new Composition(Castings.paste(0.1, 0.3).starchShares(), 0.06, 0.03, 0.04, 0.01, 0.86, 0);
    assertThat(SolidsHeat.jPerKgK(salty)).isCloseTo((10 * 1550 + 3 * 2430) / 13.0, within(1e-9));
  }

  /** A tenth more glycerol beside the same starch, salt, acid and water. */
  @Test
  void glycerolIsMultipliedBesideTheRest() {
    Composition paste =
        new Composition(
            Castings.paste(0.1, 0.3).starchShares(), 0.08, 0.024, 0.004, 0.006, 0.886, 0);
    Composition more = paste.times(1.1, Ingredient.GLYCEROL);
    assertThat(more.glycerolPerDryStarch()).isCloseTo(0.33, within(1e-12));
    assertThat(more.salt() / more.dryStarch()).isCloseTo(0.05, within(1e-12));
    assertThat(more.aceticAcid() / more.dryStarch()).isCloseTo(0.075, within(1e-12));
    assertThat(more.water() / more.dryStarch()).isCloseTo(0.886 / 0.08, within(1e-9));
  }

  /** 18 kJ/mol in water, 22 more in dry solids, going with the square of their volume. */
  @Test
  void theActivationEnergyRisesAsTheFilmDries() {
    WaterDiffusivity diffusivity = WaterDiffusivity.in(Castings.paste(0.1, 0.3));
    assertThat(diffusivity.activationEnergyJPerMol(1e9)).isCloseTo(18_000, within(0.1));
    assertThat(diffusivity.activationEnergyJPerMol(0)).isCloseTo(40_000, within(1e-9));
    double half = 997 * diffusivity.volumeM3PerKgDry(0);
    assertThat(diffusivity.activationEnergyJPerMol(half)).isCloseTo(18_000 + 5_500, within(1e-6));
    double warmer = diffusivity.m2PerS(0, 308.15) / diffusivity.m2PerS(0, 298.15);
    assertThat(warmer)
        .isCloseTo(Math.exp(40_000 / 8.314462618 * (1 / 298.15 - 1 / 308.15)), within(1e-9));
  }

  @Test
  void diffusivityRisesWithMoistureGlycerolAndWarmth() {
    WaterDiffusivity bare = WaterDiffusivity.in(Castings.paste(0.1, 0));
    WaterDiffusivity plasticised = WaterDiffusivity.in(Castings.paste(0.08, 0.25));
    double last = 0;
    for (double moisture = 0; moisture < 20; moisture = moisture * 1.1 + 0.001) {
      double here = plasticised.m2PerS(moisture, 298.15);
      assertThat(here).isGreaterThan(last);
      assertThat(here).isGreaterThan(bare.m2PerS(moisture, 298.15));
      assertThat(plasticised.m2PerS(moisture, 303.15)).isGreaterThan(here);
      last = here;
    }
  }
}
