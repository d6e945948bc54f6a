package starchfilm.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.CastingForecaster;
import starchfilm.material.recipe.Ingredient;

/**
 * What more of each ingredient moves.
 *
 * <p>Starch, glycerol and water are raised by a tenth. Vinegar is doubled, because pH and chain
 * cuts follow the root of its amount. An ingredient the recipe lacks is brought in: 10 g glycerol
 * per 100 g dry starch, or 5 g acetic acid per kg paste (10 mL of common vinegar per 100 mL).
 */
final class Sensitivities {
  private static final List<Setting> SETTINGS =
      List.of(Setting.STARCH, Setting.GLYCEROL, Setting.VINEGAR, Setting.WATER);

  private static final double MORE = 1.1;
  private static final double MORE_VINEGAR = 2;
  private static final double FIRST_GLYCEROL_PER_STARCH = 0.1;
  private static final double FIRST_ACID_PER_PASTE = 0.005;

  private static final double VISIBLE_RATIO = 0.01;
  private static final double VISIBLE_K = 0.5;
  private static final double VISIBLE_PH = 0.02;

  private final CastingForecaster forecaster;
  private final Casting casting;
  private final FilmForecast film;

  private Sensitivities(CastingForecaster forecaster, Casting casting) {
    this.forecaster = forecaster;
    this.casting = casting;
    this.film = forecaster.film(casting);
  }

  /**
   * What each of the four ingredients moves.
   *
   * @return one sensitivity per ingredient, in their order
   */
  static List<Sensitivity> of(CastingForecaster forecaster, Casting casting) {
    Sensitivities sensitivities = new Sensitivities(forecaster, casting);
    double dryThroughS = forecaster.dryThroughS(casting);
    return SETTINGS.stream().map(setting -> sensitivities.of(setting, dryThroughS)).toList();
  }

  private Sensitivity of(Setting setting, double dryThroughS) {
    Ingredient ingredient = Ingredient.valueOf(setting.name());
    Casting more = setting.set(casting, more(setting));
    FilmForecast moreFilm = forecaster.film(more);
    List<PropertyEffect> effects = new ArrayList<>();
    for (FilmProperty property : FilmProperty.values()) {
      double from = property.of(film).middle();
      double to = property.of(moreFilm).middle();
      effects.add(
          new PropertyEffect(
              property,
              from,
              to,
              visible(property, from, to)
                  ? Optional.empty()
                  : Optional.of(reason(ingredient, property))));
    }
    // Per kilogram of the paste as it is: the grams of all others are the same in both.
    double from = casting.composition().amount(ingredient);
    double others = 1 - from;
    double share = more.composition().amount(ingredient);
    return new Sensitivity(
        ingredient,
        from,
        others * share / (1 - share),
        dryThroughS,
        forecaster.dryThroughS(more),
        effects);
  }

  private double more(Setting setting) {
    double now = setting.of(casting);
    double starch = casting.composition().dryStarch();
    return switch (setting) {
      case GLYCEROL -> now == 0 ? FIRST_GLYCEROL_PER_STARCH : MORE * now;
      case VINEGAR -> now == 0 ? FIRST_ACID_PER_PASTE / starch : MORE_VINEGAR * now;
      default -> MORE * now;
    };
  }

  private static boolean visible(FilmProperty property, double from, double to) {
    double difference = Math.abs(to - from);
    return switch (property) {
      case GLASS_TRANSITION -> difference >= VISIBLE_K;
      case PASTE_PH -> difference >= VISIBLE_PH;
      default -> from > 0 && difference >= VISIBLE_RATIO * from;
    };
  }

  private static NoEffectReason reason(Ingredient ingredient, FilmProperty property) {
    return switch (ingredient) {
      case WATER ->
          property == FilmProperty.PASTE_PH
              ? NoEffectReason.TOO_SMALL
              : NoEffectReason.WATER_LEAVES;
      case VINEGAR ->
          switch (property) {
            case TENSILE_STRENGTH -> NoEffectReason.FEW_CUTS;
            case GLASS_TRANSITION, ELONGATION, YOUNGS_MODULUS, VAPOUR_PERMEABILITY ->
                NoEffectReason.NO_FIGURE;
            case PASTE_PH -> NoEffectReason.TOO_SMALL;
            default -> NoEffectReason.ACID_LEAVES;
          };
      case STARCH, GLYCEROL, SALT ->
          property == FilmProperty.PASTE_PH ? NoEffectReason.NOT_ACID : NoEffectReason.TOO_SMALL;
    };
  }
}
