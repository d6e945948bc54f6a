package starchfilm.material.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** The mass balance from the weighed recipe to the paste. */
class PasteTest {
  private static final int CASES = 200;

  @Test
  void countsTheWaterOfEveryIngredient() {
    // 40 g potato powder of 15 % moisture, 10 g of 80 % glycerol with 2 % salt, 20 g of 5 %
    // vinegar, 400 g water, 30 g steam: added up by hand.
    Paste paste =
        Paste.cooked(
            recipe(
                List.of(portion(StarchKind.POTATO, 0.040, 0.15)),
                portion(0.010, 0.80, 0.02),
                vinegar(0.020, 0.05),
                0.400,
                0.030));

    assertThat(paste.kg(Ingredient.STARCH)).isCloseTo(0.034, within(1e-15));
    assertThat(paste.kg(Ingredient.GLYCEROL)).isCloseTo(0.008, within(1e-15));
    assertThat(paste.kg(Ingredient.SALT)).isCloseTo(0.0002, within(1e-15));
    assertThat(paste.kg(Ingredient.VINEGAR)).isCloseTo(0.001, within(1e-15));
    assertThat(paste.kg(Ingredient.WATER)).isCloseTo(0.006 + 0.0018 + 0.019 + 0.370, within(1e-15));
    assertThat(paste.massKg()).isCloseTo(0.440, within(1e-15));
  }

  /** 100 g of a flour of 12 % water and 15 % bran and protein, and 5 g of chalk. */
  @Test
  void countsWhatIsNeitherStarchNorWaterAsSolids() {
    Recipe recipe =
        new Recipe(
            List.of(
                new StarchPortion(
                    StarchKind.WHEAT,
                    Estimate.exact(0.100),
                    Estimate.exact(0.12),
                    Estimate.exact(0.15))),
            portion(0, 1, 0),
            vinegar(0, 0.05),
            Estimate.exact(0.895),
            Estimate.exact(0),
            Estimate.exact(0.005),
            new Cook(Estimate.exact(900), Estimate.exact(363.15), Estimate.exact(0)));
    Paste paste = Paste.cooked(recipe);

    assertThat(paste.massKg()).isCloseTo(1, within(1e-15));
    assertThat(paste.composition().dryStarch()).isCloseTo(0.073, within(1e-15));
    assertThat(paste.composition().inert()).isCloseTo(0.020, within(1e-15));
    assertThat(paste.composition().drySolids()).isCloseTo(0.093, within(1e-15));
    assertThat(recipe.others()).containsOnlyKeys("other solids");
    assertThat(recipe.starches().get(0).powder()).isEqualTo("wheat flour");
    assertThat(portion(StarchKind.WHEAT, 0.1, 0.12).powder()).isEqualTo("wheat starch");
  }

  static List<Recipe> anyRecipes() {
    Random random = new Random(20_240_601L);
    return IntStream.range(0, CASES).mapToObj(i -> anyRecipe(random)).toList();
  }

  @ParameterizedTest
  @MethodSource("anyRecipes")
  void massClosesToRounding(Recipe recipe) {
    double in =
        recipe.starches().stream().mapToDouble(s -> s.massKg().value()).sum()
            + recipe.glycerol().massKg().value()
            + recipe.vinegar().massKg().value()
            + recipe.waterKg().value()
            + recipe.saltKg().value()
            + recipe.inertKg().value();
    assertThat(recipe.massKg()).isCloseTo(in, within(1e-14 * in));
    in -= recipe.cook().waterLostKg().value();

    Paste paste = Paste.cooked(recipe);
    Composition composition = paste.composition();

    assertThat(paste.massKg()).isCloseTo(in, within(1e-14 * Math.max(1, in)));
    assertThat(paste.kg(Ingredient.WATER)).isNotNegative();
    assertThat(composition.drySolids() + composition.water() + composition.aceticAcid())
        .isCloseTo(1, within(1e-14));
    assertThat(composition.starchShares().values().stream().mapToDouble(x -> x).sum())
        .isCloseTo(1, within(1e-14));
  }

  @ParameterizedTest
  @MethodSource("anyRecipes")
  void uncertaintyEqualsTheOneFoundByMovingEachFigure(Recipe recipe) {
    // The same first-order rule with slopes from central differences over the whole balance, which
    // shares nothing with the slopes written out in the class.
    assertThat(Paste.cooked(recipe).solidsRelativeSd())
        .isCloseTo(moved(recipe, paste -> Math.log(paste.composition().drySolids())), within(1e-7));
    if (recipe.glycerol().massKg().value() > 0) {
      assertThat(Paste.cooked(recipe).plasticiserRelativeSd())
          .isCloseTo(
              moved(recipe, paste -> Math.log(paste.composition().glycerolPerDryStarch())),
              within(1e-7));
    }
  }

  @Test
  void addsTwoPortionsOfTheSameKind() {
    StarchPortion half = portion(StarchKind.CORN, 0.010, 0.1);
    Paste paste = Paste.cooked(plain(List.of(half, half)));

    assertThat(paste.composition().starchShares()).containsOnlyKeys(StarchKind.CORN);
    assertThat(paste.kg(Ingredient.STARCH)).isCloseTo(0.018, within(1e-15));
  }

  @Test
  void hasNoPlasticiserUncertaintyWithoutGlycerol() {
    Paste paste = Paste.cooked(plain(List.of(portion(StarchKind.CORN, 0.010, 0.1))));

    assertThat(paste.plasticiserRelativeSd()).isZero();
    assertThat(paste.composition().glycerolPerDryStarch()).isZero();
  }

  @Test
  void refusesMoreSteamThanWater() {
    Recipe recipe =
        recipe(
            List.of(portion(StarchKind.CORN, 0.010, 0.1)),
            portion(0, 1, 0),
            vinegar(0, 0.05),
            0.100,
            0.150);

    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> Paste.cooked(recipe));
    assertThat(refusal)
        .hasMessage(
            "water lost in the pot: 150 g given, allowed 0 to 101 g, all the water there is;"
                + " weigh the pot before and after the cook");
  }

  @Test
  void refusesARecipeWhoseStarchWeighsNothing() {
    Recipe recipe = plain(List.of(portion(StarchKind.CORN, 0, 0.1)));

    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> Paste.cooked(recipe));
    assertThat(refusal)
        .hasMessage("starch: 0 g given, allowed more than 0 g; write the grams of powder weighed");
  }

  @Test
  void refusesImpossibleAmounts() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class, () -> portion(StarchKind.CORN, -0.004, 0.1)))
        .hasMessage("corn starch: -4 g given, allowed 0 g or more; write the grams weighed");
    assertThat(assertThrows(IllegalArgumentException.class, () -> vinegar(0.01, 5)))
        .hasMessage(
            "acidity of the vinegar: 500 % given, allowed 0 to 100 %; write the share of the"
                + " mass as weighed");
  }

  private static double moved(Recipe recipe, ToDoubleFunction<Paste> result) {
    double variance = 0;
    for (int i = 0; i < figures(recipe).size(); i++) {
      double sd = figures(recipe).get(i).sd();
      double step = 1e-6 * Math.max(1e-3, Math.abs(figures(recipe).get(i).value()));
      double slope =
          (result.applyAsDouble(Paste.cooked(with(recipe, i, step)))
                  - result.applyAsDouble(Paste.cooked(with(recipe, i, -step))))
              / (2 * step);
      variance += slope * slope * sd * sd;
    }
    return Math.sqrt(variance);
  }

  private static List<Estimate> figures(Recipe recipe) {
    List<Estimate> all = new ArrayList<>();
    for (StarchPortion starch : recipe.starches()) {
      all.add(starch.massKg());
      all.add(starch.moistureFraction());
      all.add(starch.inertFraction());
    }
    all.add(recipe.glycerol().massKg());
    all.add(recipe.glycerol().stock().glycerolFraction());
    all.add(recipe.glycerol().stock().saltFraction());
    all.add(recipe.vinegar().massKg());
    all.add(recipe.vinegar().acidityFraction());
    all.add(recipe.waterKg());
    all.add(recipe.saltKg());
    all.add(recipe.inertKg());
    all.add(recipe.cook().waterLostKg());
    return all;
  }

  private static Recipe with(Recipe recipe, int index, double change) {
    List<Estimate> all = figures(recipe);
    all.set(index, new Estimate(all.get(index).value() + change, all.get(index).sd()));
    List<StarchPortion> starches = new ArrayList<>();
    int next = 0;
    for (StarchPortion starch : recipe.starches()) {
      starches.add(
          new StarchPortion(starch.kind(), all.get(next), all.get(next + 1), all.get(next + 2)));
      next += 3;
    }
    return new Recipe(
        starches,
        new GlycerolPortion(all.get(next), new GlycerolStock(all.get(next + 1), all.get(next + 2))),
        new VinegarPortion(all.get(next + 3), all.get(next + 4)),
        all.get(next + 5),
        all.get(next + 6),
        all.get(next + 7),
        new Cook(recipe.cook().durationS(), recipe.cook().topTemperatureK(), all.get(next + 8)));
  }

  private static Recipe anyRecipe(Random random) {
    StarchKind[] kinds = StarchKind.values();
    List<StarchPortion> starches = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      starches.add(
          new StarchPortion(
              kinds[random.nextInt(kinds.length)],
              estimate(random, 0.005, 0.2),
              estimate(random, 0.05, 0.2),
              estimate(random, 0.001, 0.3)));
    }
    return new Recipe(
        starches,
        new GlycerolPortion(
            estimate(random, 0.001, 0.1),
            new GlycerolStock(estimate(random, 0.3, 0.9), estimate(random, 0.001, 0.08))),
        new VinegarPortion(estimate(random, 0.001, 0.1), estimate(random, 0.03, 0.1)),
        estimate(random, 0.5, 2),
        estimate(random, 0.001, 0.01),
        estimate(random, 0.001, 0.05),
        new Cook(Estimate.exact(900), Estimate.exact(363.15), estimate(random, 0.001, 0.4)));
  }

  private static Estimate estimate(Random random, double from, double to) {
    double value = from + (to - from) * random.nextDouble();
    return new Estimate(value, value * 0.1 * random.nextDouble());
  }

  private static Recipe plain(List<StarchPortion> starches) {
    return recipe(starches, portion(0, 1, 0), vinegar(0, 0.05), 0.2, 0);
  }

  private static Recipe recipe(
      List<StarchPortion> starches,
      GlycerolPortion glycerol,
      VinegarPortion vinegar,
      double waterKg,
      double lostKg) {
    return new Recipe(
        starches,
        glycerol,
        vinegar,
        Estimate.exact(waterKg),
        Estimate.exact(0),
        new Cook(Estimate.exact(900), Estimate.exact(363.15), Estimate.exact(lostKg)));
  }

  private static StarchPortion portion(StarchKind kind, double massKg, double moisture) {
    return new StarchPortion(kind, Estimate.exact(massKg), Estimate.exact(moisture));
  }

  private static GlycerolPortion portion(double massKg, double glycerol, double salt) {
    return new GlycerolPortion(
        Estimate.exact(massKg), new GlycerolStock(Estimate.exact(glycerol), Estimate.exact(salt)));
  }

  private static VinegarPortion vinegar(double massKg, double acidity) {
    return new VinegarPortion(Estimate.exact(massKg), Estimate.exact(acidity));
  }
}
