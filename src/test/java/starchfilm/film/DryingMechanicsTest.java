package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** Stiffness and toughness from gel to glass at states that can be worked by hand. */
class DryingMechanicsTest {
  private final Composition paste = Castings.paste(StarchKind.CORN, 0.06, 0);
  private final DryingMechanics mechanics = DryingMechanics.of(paste);
  private final StiffnessRule dryFilm = new StiffnessRule();

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
    assertThat(mechanics.modulusPa(0.05, kelvin))
        .isCloseTo(dryFilm.at(7, paste.amyloseFractionOfStarch()), within(1.0));
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
    assertThat(mechanics.modulusPa(half, kelvin(half, 50)))
        .isCloseTo(dryFilm.at(50, paste.amyloseFractionOfStarch()) / 8, within(1.0));
  }

  /**
   * 60 g glycerol beside 100 g starch thins like water: of 1.6 g, dry, 0.667 + 0.477 cm3 are 58 %
   * starch; with 0.16 g of water 51.2 %, and the cube of 0.512/0.55 is left.
   */
  @Test
  void glycerolAndWaterThinAlike() {
    DryingMechanics soft = DryingMechanics.of(Castings.paste(StarchKind.CORN, 0.06, 0.6));
    double starch = 100 / 1500.0;
    double share = starch / (starch + 60 / 1258.0 + 0.1 * 160 / 997.0);
    double kelvin = 300 - soft.aboveGlassK(0.1, 0);
    assertThat(soft.toughnessJPerM2(0.1, kelvin))
        .isCloseTo(1000 * Math.pow(share / 0.55, 3), within(1.0));
  }

  private double toughness(double moisture, double aboveGlassK) {
    return mechanics.toughnessJPerM2(moisture, kelvin(moisture, aboveGlassK));
  }

  /** The temperature so far above the glass transition at a moisture. */
  private double kelvin(double moisture, double aboveGlassK) {
    return aboveGlassK - mechanics.aboveGlassK(moisture, 0);
  }
}
