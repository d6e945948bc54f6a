package starchfilm.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

class SensitivitiesTest {
  private static final CastingForecaster TEXTBOOK =
      new CastingForecaster(
          new PlateParameters(ParameterDistribution.textbook(), false, 0, List.of()),
          new FilmForecaster());

  private final Casting usual = Castings.film(paste(0.28, 0.005));

  @Test
  void eachIngredientMovesSomethingVisibly() {
    assertThat(Sensitivities.of(TEXTBOOK, usual))
        .extracting(Sensitivity::ingredient)
        .containsExactly(
            Ingredient.STARCH, Ingredient.GLYCEROL, Ingredient.VINEGAR, Ingredient.WATER);
    assertThat(Sensitivities.of(TEXTBOOK, usual))
        .allSatisfy(
            sensitivity ->
                assertThat(sensitivity.effects())
                    .anySatisfy(effect -> assertThat(effect.unmoved()).isEmpty()));
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
  void waterMovesThicknessAndSaysWhyNotTheRest() {
    assertThat(moved(Ingredient.WATER)).contains(FilmProperty.DRY_THICKNESS);
    PropertyEffect strength = effect(Ingredient.WATER, FilmProperty.GLASS_TRANSITION);
    assertThat(strength.unmoved()).contains(NoEffectReason.WATER_LEAVES);
    assertThat(strength.to()).isCloseTo(strength.from(), within(1e-9));
  }

  @Test
  void vinegarMovesPhAndStrengthAndSaysWhyNotTheRest() {
    assertThat(moved(Ingredient.VINEGAR))
        .contains(FilmProperty.PASTE_PH, FilmProperty.TENSILE_STRENGTH);
    assertThat(effect(Ingredient.VINEGAR, FilmProperty.EQUILIBRIUM_MOISTURE).unmoved())
        .contains(NoEffectReason.ACID_LEAVES);
    assertThat(effect(Ingredient.VINEGAR, FilmProperty.ELONGATION).unmoved())
        .contains(NoEffectReason.NO_FIGURE);
  }

  @Test
  void everyUnmovedPropertyHasItsReason() {
    for (Sensitivity lever : Sensitivities.of(TEXTBOOK, usual)) {
      assertThat(lever.effects()).hasSize(FilmProperty.values().length);
      assertThat(lever.effects())
          .allMatch(effect -> effect.from() != effect.to() || effect.unmoved().isPresent());
    }
  }

  @Test
  void bringsInAnIngredientTheRecipeLacks() {
    Casting plain = Castings.film(paste(0, 0));
    List<Sensitivity> found = Sensitivities.of(TEXTBOOK, plain);

    Sensitivity glycerol = found.get(Ingredient.GLYCEROL.ordinal());
    Sensitivity vinegar = found.get(Ingredient.VINEGAR.ordinal());
    assertThat(glycerol.fromKgPerKgPaste()).isZero();
    assertThat(glycerol.toKgPerKgPaste()).isCloseTo(0.005, within(1e-12));
    assertThat(vinegar.fromKgPerKgPaste()).isZero();
    assertThat(vinegar.toKgPerKgPaste()).isCloseTo(0.005, within(1e-12));
    assertThat(moved(glycerol)).contains(FilmProperty.TENSILE_STRENGTH);
    assertThat(moved(vinegar)).contains(FilmProperty.PASTE_PH, FilmProperty.TENSILE_STRENGTH);
  }

  /** A tenth more of each, and twice the vinegar, of which a tenth would not show. */
  @Test
  void aTenthMoreOfEachIsTriedAndTwiceTheVinegar() {
    for (Sensitivity lever : Sensitivities.of(TEXTBOOK, usual)) {
      double times = lever.ingredient() == Ingredient.VINEGAR ? 2 : 1.1;
      assertThat(lever.toKgPerKgPaste() / lever.fromKgPerKgPaste())
          .as("%s", lever.ingredient())
          .isCloseTo(times, within(1e-9));
    }
  }

  /** Half a kelvin, 0.02 of pH and a hundredth of anything else show; less does not (judged). */
  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.1, 0.15, 0.2, 0.3, 0.45})
  void whatMovesByLessThanShowsIsSaidNotToMove(double glycerolPerStarch) {
    for (double acid : new double[] {0, 1e-4, 1e-3, 5e-3}) {
      for (Sensitivity lever :
          Sensitivities.of(TEXTBOOK, Castings.film(paste(glycerolPerStarch, acid)))) {
        for (PropertyEffect effect : lever.effects()) {
          double by = Math.abs(effect.to() - effect.from());
          boolean shows =
              switch (effect.property()) {
                case GLASS_TRANSITION -> by >= 0.5;
                case PASTE_PH -> by >= 0.02;
                default -> by >= 0.01 * effect.from();
              };
          assertThat(effect.unmoved().isEmpty())
              .as("%s by %s", effect.property(), by)
              .isEqualTo(shows);
        }
      }
    }
  }

  @Test
  void waterAndStarchLeaveThePhAsItIsForTheirOwnReasons() {
    List<Sensitivity> found = Sensitivities.of(TEXTBOOK, Castings.film(paste(0.28, 0)));
    assertThat(found.get(Ingredient.WATER.ordinal()).on(FilmProperty.PASTE_PH).unmoved())
        .contains(NoEffectReason.TOO_SMALL);
    assertThat(found.get(Ingredient.STARCH.ordinal()).on(FilmProperty.PASTE_PH).unmoved())
        .contains(NoEffectReason.NOT_ACID);
  }

  private List<FilmProperty> moved(Ingredient ingredient) {
    return moved(Sensitivities.of(TEXTBOOK, usual).get(ingredient.ordinal()));
  }

  private static List<FilmProperty> moved(Sensitivity sensitivity) {
    return sensitivity.effects().stream()
        .filter(effect -> effect.unmoved().isEmpty())
        .map(PropertyEffect::property)
        .toList();
  }

  private PropertyEffect effect(Ingredient ingredient, FilmProperty property) {
    return Sensitivities.of(TEXTBOOK, usual).get(ingredient.ordinal()).on(property);
  }

  /** A paste of 5 % corn starch. */
  private static Composition paste(double glycerolPerStarch, double acid) {
    return Castings.paste(StarchKind.CORN, 0.05, glycerolPerStarch).with(Ingredient.VINEGAR, acid);
  }
}
