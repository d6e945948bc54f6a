package starchfilm.film;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

/**
 * What each ingredient moves, found by forecasting again with more of it.
 *
 * <p>Starch, glycerol and water are raised by a tenth. Vinegar is doubled, because pH and chain
 * cuts follow the root of its amount. An ingredient the recipe lacks is brought in: 10 g glycerol
 * per 100 g dry starch, or 5 g acetic acid per kg paste (10 mL of common vinegar per 100 mL).
 */
public final class Levers {
  private static final List<Ingredient> INGREDIENTS =
      List.of(Ingredient.STARCH, Ingredient.GLYCEROL, Ingredient.VINEGAR, Ingredient.WATER);

  private static final double MORE = 1.1;
  private static final double MORE_VINEGAR = 2;
  private static final double FIRST_GLYCEROL_PER_STARCH = 0.1;
  private static final double FIRST_ACID_PER_PASTE = 0.005;

  private static final double VISIBLE_RATIO = 0.01;
  private static final double VISIBLE_K = 0.5;
  private static final double VISIBLE_PH = 0.02;

  private final FilmForecaster forecaster;

  /**
   * Levers on a forecaster's figures.
   *
   * @param forecaster what forecasts
   */
  public Levers(FilmForecaster forecaster) {
    this.forecaster = forecaster;
  }

  /**
   * What each of the four ingredients moves.
   *
   * @param casting the case as it is
   * @return one lever per ingredient, in their order
   */
  public List<Lever> of(Casting casting) {
    Map<FilmProperty, Double> before = figures(casting);
    List<Lever> levers = new ArrayList<>();
    for (Ingredient ingredient : INGREDIENTS) {
      levers.add(lever(ingredient, casting, before));
    }
    return levers;
  }

  private Lever lever(Ingredient ingredient, Casting casting, Map<FilmProperty, Double> before) {
    Composition paste = casting.composition();
    double toKg = changed(ingredient, paste);
    Map<FilmProperty, Double> after = figures(casting.with(paste.with(ingredient, toKg)));
    List<IngredientEffect> effects = new ArrayList<>();
    for (FilmProperty property : FilmProperty.values()) {
      double from = before.getOrDefault(property, 0.0);
      double to = after.getOrDefault(property, 0.0);
      Optional<Unmoved> unmoved =
          visible(property, from, to)
              ? Optional.empty()
              : Optional.of(reason(ingredient, toKg, property));
      effects.add(new IngredientEffect(ingredient, property, from, to, unmoved));
    }
    return new Lever(ingredient, paste.amount(ingredient), toKg, effects);
  }

  private Map<FilmProperty, Double> figures(Casting casting) {
    FilmForecast forecast = forecaster.forecast(casting);
    Map<FilmProperty, Double> figures = new EnumMap<>(FilmProperty.class);
    figures.put(FilmProperty.STARCH_IN_PASTE, casting.composition().dryStarch());
    figures.put(FilmProperty.PASTE_PH, forecast.acid().pastePh());
    figures.put(FilmProperty.EQUILIBRIUM_MOISTURE, forecast.equilibriumMoisture().middle());
    figures.put(FilmProperty.DRY_THICKNESS, forecast.dryThicknessM().middle());
    figures.put(FilmProperty.GLASS_TRANSITION, forecast.glassTransitionK().middle());
    figures.put(FilmProperty.TENSILE_STRENGTH, forecast.tensileStrengthPa().middle());
    figures.put(FilmProperty.ELONGATION, forecast.elongationAtBreak().middle());
    figures.put(FilmProperty.YOUNGS_MODULUS, forecast.youngsModulusPa().middle());
    figures.put(FilmProperty.VAPOUR_PERMEABILITY, forecast.vapourPermeability().middle());
    return figures;
  }

  /** How much there is then of an ingredient, beside what else a kilogram of paste holds (kg). */
  private static double changed(Ingredient ingredient, Composition paste) {
    double present = paste.amount(ingredient);
    if (present == 0 && ingredient == Ingredient.GLYCEROL) {
      return FIRST_GLYCEROL_PER_STARCH * paste.dryStarch();
    }
    if (present == 0 && ingredient == Ingredient.VINEGAR) {
      return FIRST_ACID_PER_PASTE;
    }
    return present * (ingredient == Ingredient.VINEGAR ? MORE_VINEGAR : MORE);
  }

  private static boolean visible(FilmProperty property, double from, double to) {
    double difference = Math.abs(to - from);
    return switch (property) {
      case GLASS_TRANSITION -> difference >= VISIBLE_K;
      case PASTE_PH -> difference >= VISIBLE_PH;
      default -> from > 0 && difference >= VISIBLE_RATIO * from;
    };
  }

  private static Unmoved reason(Ingredient ingredient, double toKg, FilmProperty property) {
    if (toKg == 0) {
      return Unmoved.NONE_IN_RECIPE;
    }
    return switch (ingredient) {
      case WATER -> property == FilmProperty.PASTE_PH ? Unmoved.TOO_SMALL : Unmoved.WATER_LEAVES;
      case VINEGAR ->
          switch (property) {
            case TENSILE_STRENGTH -> Unmoved.FEW_CUTS;
            case GLASS_TRANSITION, ELONGATION, YOUNGS_MODULUS, VAPOUR_PERMEABILITY ->
                Unmoved.NO_FIGURE;
            case PASTE_PH -> Unmoved.TOO_SMALL;
            default -> Unmoved.ACID_LEAVES;
          };
      case STARCH, GLYCEROL, SALT ->
          property == FilmProperty.PASTE_PH ? Unmoved.NOT_ACID : Unmoved.TOO_SMALL;
    };
  }
}
