package starchfilm.material.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.material.ingredient.StarchKind;

/** A paste per kilogram, worked out by hand from the densities 1500, 1258 and 997 kg/m3. */
class CompositionTest {
  /** 60 g starch, 20 g glycerol, 20 g salt, 10 g acid and 890 g water in a kilogram. */
  private final Composition paste =
      new Composition(
          Map.of(StarchKind.CORN, 0.75, StarchKind.WAXY_CORN, 0.25),
          0.06,
          0.02,
          0.02,
          0.01,
          0.89,
          0);

  /** Of 100 g solids: 80 g at 1500 and 20 g at 1258 kg/m3; X kg water at 997. */
  @Test
  void addsTheVolumesOfItsParts() {
    double dryM3PerKg = 0.8 / 1500 + 0.2 / 1258;

    assertThat(paste.volumeM3PerKgDry(0)).isCloseTo(dryM3PerKg, within(1e-15));
    assertThat(paste.volumeM3PerKgDry(2)).isCloseTo(dryM3PerKg + 2.0 / 997, within(1e-15));
  }

  @Test
  void countsAcidAsWater() {
    assertThat(paste.drySolids()).isCloseTo(0.1, within(1e-15));
    assertThat(paste.waterKgPerKgDry()).isCloseTo(9, within(1e-12));
  }

  /** A kilogram: 80 g at 1500, 20 g at 1258 and 900 g at 997 kg/m3. */
  @Test
  void weighsWhatItsPartsWeighOverTheirVolume() {
    double litres = 80.0 / 1500 + 20.0 / 1258 + 900.0 / 997;

    assertThat(paste.pasteDensityKgPerM3()).isCloseTo(1000 / litres, within(1e-9));
  }

  @Test
  void mixesAmyloseByShare() {
    double corn = StarchKind.CORN.amyloseFraction();
    double waxy = StarchKind.WAXY_CORN.amyloseFraction();

    assertThat(corn).isBetween(0.25, 0.28);
    assertThat(waxy).isBetween(0.0, 0.02);
    assertThat(paste.amyloseFractionOfStarch()).isCloseTo(0.75 * corn + 0.25 * waxy, within(1e-15));
  }

  @Test
  void tellsShares() {
    assertThat(paste.glycerolPerDryStarch()).isCloseTo(1.0 / 3, within(1e-15));
    assertThat(paste.glycerolFractionOfStarchAndGlycerol()).isCloseTo(0.25, within(1e-15));
    assertThat(paste.saltFractionOfDry()).isCloseTo(0.2, within(1e-15));
  }

  /** 50 g starch, 20 g glycerol, 10 g salt, 10 g acid, 880 g water, 30 g chalk. */
  private final Composition filled =
      Composition.of(Map.of(StarchKind.CORN, 1.0), 50, 20, 10, 10, 880, 30);

  @Test
  void countsInertSolidsAsSolidsThatTakeUpNoWater() {
    assertThat(filled.drySolids()).isCloseTo(0.11, within(1e-15));
    assertThat(filled.inertFractionOfDry()).isCloseTo(3.0 / 11, within(1e-15));
    assertThat(filled.starchAndGlycerolFractionOfDry()).isCloseTo(7.0 / 11, within(1e-15));
    assertThat(filled.starchLike()).isCloseTo(0.09, within(1e-15));
  }

  @ParameterizedTest
  @EnumSource(Ingredient.class)
  void changesOneIngredientAndKeepsTheGramsOfAllOthers(Ingredient changed) {
    Composition doubled = filled.times(2, changed);
    double grown = 1 + filled.amount(changed);

    for (Ingredient each : Ingredient.values()) {
      assertThat(doubled.amount(each) * grown)
          .isCloseTo((each == changed ? 2 : 1) * filled.amount(each), within(1e-15));
    }
    assertThat(doubled.inert() * grown).isCloseTo(0.03, within(1e-15));
    assertThat(filled.perStarch(changed)).isCloseTo(filled.amount(changed) / 0.05, within(1e-12));
  }

  @Test
  void thinsWithWaterAlone() {
    Composition thin = filled.withStarchInPaste(0.025);

    assertThat(thin.dryStarch()).isCloseTo(0.025, within(1e-15));
    assertThat(thin.water()).isCloseTo((2000 - 120) / 2000.0, within(1e-15));
    assertThat(thin.perStarch(Ingredient.GLYCEROL)).isCloseTo(0.4, within(1e-12));
  }

  /** Of the kinds, those of more than 2 %: the hardest of them decides how it is cooked. */
  @Test
  void leavesATraceOfAnotherStarchOut() {
    Composition blend =
        paste.withStarches(
            Map.of(StarchKind.CORN, 0.57, StarchKind.RICE, 0.41, StarchKind.WHEAT, 0.02));

    assertThat(blend.kinds()).containsExactlyInAnyOrder(StarchKind.CORN, StarchKind.RICE);
    assertThat(blend.most(kind -> kind == StarchKind.WHEAT ? 9 : kind == StarchKind.RICE ? 3 : 1))
        .isEqualTo(3);
  }

  @Test
  void refusesWhatDoesNotAddUpOrHoldsNeitherStarchNorGlycerol() {
    assertThatThrownBy(() -> new Composition(Map.of(), 0.06, 0.02, 0.02, 0.01, 0.9, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("the fractions of a paste must add up to 1, not 1.01");
    assertThatThrownBy(() -> new Composition(Map.of(), 0, 0, 0.1, 0, 0.9, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a paste needs starch or glycerol");
  }
}
