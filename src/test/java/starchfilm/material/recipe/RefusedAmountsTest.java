package starchfilm.material.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** What no recipe can hold, and the ends of what one can. */
class RefusedAmountsTest {
  private static final Estimate NONE = Estimate.exact(0);
  private static final Estimate BELOW = Estimate.exact(-0.004);
  private static final Estimate QUARTER_HOUR = Estimate.exact(900);
  private static final Estimate HOT = Estimate.exact(363.15);

  @Test
  void refusesMassesBelowNothing() {
    assertRefused(() -> new GlycerolPortion(BELOW, jar(0.8, 0)), "glycerol: -4 g given");
    assertRefused(() -> new VinegarPortion(BELOW, Estimate.exact(0.05)), "vinegar: -4 g given");
    assertRefused(() -> starch(-0.004, 0.1), "corn starch: -4 g given");
    assertRefused(() -> new Cook(QUARTER_HOUR, HOT, BELOW), "water lost in the pot: -4 g given");
    assertRefused(() -> recipe(BELOW, NONE, NONE), "water: -4 g given");
    assertRefused(() -> recipe(NONE, BELOW, NONE), "salt: -4 g given");
    assertRefused(
        () ->
            new Recipe(
                List.of(starch(0.01, 0.1)), glycerol(), vinegar(), NONE, NONE, BELOW, cook(NONE)),
        "other solids: -4 g given");
    assertThatThrownBy(() -> new Recipe(List.of(), glycerol(), vinegar(), NONE, NONE, cook(NONE)))
        .hasMessage("a recipe needs at least one starch");
  }

  @Test
  void refusesSharesOutsideNothingAndAll() {
    assertRefused(
        () -> starch(0.01, -0.01), "moisture of corn starch: -1 % given, allowed 0 to 30");
    assertRefused(() -> starch(0.01, 0.31), "moisture of corn starch: 31 % given, allowed 0 to 30");
    assertRefused(
        () -> new StarchPortion(StarchKind.CORN, NONE, NONE, Estimate.exact(0.51)),
        "other solids in corn: 51 % given, allowed 0 to 50");
    assertRefused(
        () -> new VinegarPortion(NONE, Estimate.exact(-0.05)), "acidity of the vinegar: -5 %");
    assertRefused(() -> jar(-0.1, 0.1), "glycerol and salt in a jar must each be 0 or more");
    assertRefused(() -> jar(0.1, -0.1), "glycerol and salt in a jar must each be 0 or more");
    assertRefused(() -> jar(0.9, 0.2), "glycerol and salt in a jar must each be 0 or more");
  }

  @Test
  void refusesACookThatCannotBe() {
    assertRefused(() -> new Cook(Estimate.exact(-1), HOT, NONE), "cooking time: -1.0 s given");
    assertRefused(
        () -> new Cook(QUARTER_HOUR, NONE, NONE), "top temperature of the cook: 0.0 K given");
  }

  @Test
  void takesTheEnds() {
    assertThat(starch(0, 0).dryKg()).isZero();
    assertThat(starch(0.1, 0.3).dryKg()).isEqualTo(0.1 * 0.7);
    assertThat(new VinegarPortion(NONE, Estimate.exact(1)).acidityFraction().value()).isEqualTo(1);
    assertThat(jar(0.9, 0.1).saltFraction().value()).isEqualTo(0.1);
    assertThat(jar(0, 0).glycerolFraction().value()).isZero();
    assertThat(new Cook(NONE, HOT, NONE).durationS().value()).isZero();
  }

  /** All the water there is may boil away: 100 g poured in, none in dry powder. */
  @Test
  void letsAllTheWaterBoilAway() {
    Estimate all = Estimate.exact(0.1);
    Paste paste =
        Paste.cooked(
            new Recipe(
                List.of(starch(0.01, 0)),
                new GlycerolPortion(NONE, jar(1, 0)),
                vinegar(),
                all,
                NONE,
                cook(all)));

    assertThat(paste.kg(Ingredient.WATER)).isZero();
    assertThat(paste.massKg()).isEqualTo(0.01);
  }

  private static void assertRefused(Runnable making, String start) {
    assertThatThrownBy(making::run)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(start);
  }

  private static Recipe recipe(Estimate waterKg, Estimate saltKg, Estimate lostKg) {
    return new Recipe(
        List.of(starch(0.01, 0.1)), glycerol(), vinegar(), waterKg, saltKg, cook(lostKg));
  }

  private static StarchPortion starch(double massKg, double moisture) {
    return new StarchPortion(StarchKind.CORN, Estimate.exact(massKg), Estimate.exact(moisture));
  }

  private static GlycerolPortion glycerol() {
    return new GlycerolPortion(NONE, jar(0.8, 0));
  }

  private static GlycerolStock jar(double glycerol, double salt) {
    return new GlycerolStock(Estimate.exact(glycerol), Estimate.exact(salt));
  }

  private static VinegarPortion vinegar() {
    return new VinegarPortion(NONE, Estimate.exact(0.05));
  }

  private static Cook cook(Estimate lostKg) {
    return new Cook(QUARTER_HOUR, HOT, lostKg);
  }
}
