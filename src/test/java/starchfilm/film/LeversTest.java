package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

class LeversTest {
  private final Levers levers = new Levers(new FilmForecaster());

  private final Casting usual = Pastes.fresh(Pastes.paste(StarchKind.CORN, 0.05, 28, 0, 0.005));

  @Test
  void eachIngredientMovesSomethingVisibly() {
    assertThat(levers.of(usual))
        .extracting(Lever::ingredient)
        .containsExactly(
            Ingredient.STARCH, Ingredient.GLYCEROL, Ingredient.VINEGAR, Ingredient.WATER);
    assertThat(levers.of(usual)).allSatisfy(lever -> assertThat(lever.moved()).isNotEmpty());
  }

  @Test
  void glycerolMovesTheFilmAndStarchMovesItBack() {
    assertThat(effect(Ingredient.GLYCEROL, FilmProperty.ELONGATION).to())
        .isGreaterThan(effect(Ingredient.GLYCEROL, FilmProperty.ELONGATION).from());
    assertThat(effect(Ingredient.STARCH, FilmProperty.ELONGATION).to())
        .isLessThan(effect(Ingredient.STARCH, FilmProperty.ELONGATION).from());
    assertThat(effect(Ingredient.STARCH, FilmProperty.DRY_THICKNESS).unmoved()).isEmpty();
  }

  @Test
  void waterMovesConcentrationAndThicknessAndSaysWhyNotTheRest() {
    assertThat(moved(Ingredient.WATER))
        .contains(FilmProperty.STARCH_IN_PASTE, FilmProperty.DRY_THICKNESS);
    IngredientEffect strength = effect(Ingredient.WATER, FilmProperty.GLASS_TRANSITION);
    assertThat(strength.unmoved()).contains(Unmoved.WATER_LEAVES);
    assertThat(strength.to()).isCloseTo(strength.from(), within(1e-9));
  }

  @Test
  void vinegarMovesPhAndStrengthAndSaysWhyNotTheRest() {
    assertThat(moved(Ingredient.VINEGAR))
        .contains(FilmProperty.PASTE_PH, FilmProperty.TENSILE_STRENGTH);
    assertThat(effect(Ingredient.VINEGAR, FilmProperty.EQUILIBRIUM_MOISTURE).unmoved())
        .contains(Unmoved.ACID_LEAVES);
    assertThat(effect(Ingredient.VINEGAR, FilmProperty.ELONGATION).unmoved())
        .contains(Unmoved.NO_FIGURE);
  }

  @Test
  void everyUnmovedPropertyHasItsReason() {
    for (Lever lever : levers.of(usual)) {
      assertThat(lever.effects()).hasSize(FilmProperty.values().length);
      assertThat(lever.effects().stream().map(IngredientEffect::unmoved).flatMap(Optional::stream))
          .allSatisfy(why -> assertThat(why.words()).isNotBlank());
    }
  }

  @Test
  void bringsInAnIngredientTheRecipeLacks() {
    Casting plain = Pastes.fresh(Pastes.paste(StarchKind.CORN, 0.05, 0, 0, 0));
    List<Lever> found = levers.of(plain);

    Lever glycerol = found.get(Ingredient.GLYCEROL.ordinal());
    Lever vinegar = found.get(Ingredient.VINEGAR.ordinal());
    assertThat(glycerol.fromKgPerKgPaste()).isZero();
    assertThat(glycerol.toKgPerKgPaste()).isCloseTo(0.005, within(1e-12));
    assertThat(glycerol.moved())
        .extracting(IngredientEffect::property)
        .contains(FilmProperty.TENSILE_STRENGTH);
    assertThat(vinegar.moved())
        .extracting(IngredientEffect::property)
        .contains(FilmProperty.PASTE_PH, FilmProperty.TENSILE_STRENGTH);
  }

  @Test
  void withoutStarchItsLeverSaysSo() {
    Casting liquid = Pastes.fresh(new Composition(Map.of(), 0, 0.1, 0, 0, 0.9));

    assertThat(levers.of(liquid).get(0).effects())
        .allSatisfy(effect -> assertThat(effect.unmoved()).contains(Unmoved.NONE_IN_RECIPE));
  }

  private List<FilmProperty> moved(Ingredient ingredient) {
    return levers.of(usual).get(ingredient.ordinal()).moved().stream()
        .map(IngredientEffect::property)
        .toList();
  }

  private IngredientEffect effect(Ingredient ingredient, FilmProperty property) {
    return levers.of(usual).get(ingredient.ordinal()).effects().get(property.ordinal());
  }
}
