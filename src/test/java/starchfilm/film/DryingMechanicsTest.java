package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** Stiffness and toughness from gel to glass at states that can be worked by hand. */
class DryingMechanicsTest {
  private static final Composition PASTE = Castings.paste(StarchKind.CORN, 0.06, 0);
  private static final DryingMechanics MECHANICS = DryingMechanics.of(PASTE);
  private static final StiffnessRule DRY_FILM = new StiffnessRule();

  /** 200 J/m2 of glass, 1000 of rubber, half-way at 20 K below Tg, and a width of 15 K. */
  @Test
  void toughnessRisesFromGlassToRubber() {
    assertThat(toughness(0.05, -20)).isCloseTo(200 + 800 / 2.0, within(1e-6));
    assertThat(toughness(0.05, -5)).isCloseTo(200 + 800 / (1 + Math.exp(-1)), within(1e-6));
    assertThat(toughness(0.05, -200)).isCloseTo(200, within(0.01));
    assertThat(toughness(0.05, 200)).isCloseTo(1000, within(0.01));
  }

  @Test
  void aFilmDriedToItsStarchIsAsStiffAsTheRuleOfTheDryFilmSays() {
    double kelvin = kelvin(0.05, 7);
    assertThat(MECHANICS.modulusPa(0.05, kelvin))
        .isCloseTo(DRY_FILM.at(7, PASTE.amyloseFractionOfStarch()), within(1.0));
  }

  /**
   * Starch of 1500 kg/m3 is 55 % of the volume at X = 997/1500 (1/0.55 - 1), and half of that where
   * the volume is twice as large: there only an eighth is left.
   */
  @Test
  void waterThinsItByTheCubeOfTheStarchsShareOfTheVolume() {
    double from = 997.0 / 1500 * (1 / 0.55 - 1);
    double half = 997.0 / 1500 * (2 / 0.55 - 1);

    assertThat(toughness(0.99 * from, 300)).isCloseTo(1000, within(0.01));
    assertThat(toughness(from, 300)).isCloseTo(1000, within(0.01));
    assertThat(toughness(half, 300)).isCloseTo(1000 / 8.0, within(0.01));
    assertThat(MECHANICS.modulusPa(half, kelvin(half, 50)))
        .isCloseTo(DRY_FILM.at(50, PASTE.amyloseFractionOfStarch()) / 8, within(1.0));
  }

  private static double toughness(double moisture, double aboveGlassK) {
    return MECHANICS.toughnessJPerM2(moisture, kelvin(moisture, aboveGlassK));
  }

  /** The temperature so far above the glass transition at a moisture. */
  private static double kelvin(double moisture, double aboveGlassK) {
    return aboveGlassK - MECHANICS.aboveGlassK(moisture, 0);
  }
}
