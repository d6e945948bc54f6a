package starchfilm.change;

import java.util.Arrays;
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

  /** What moves by less is said not to move (ratio, K, pH; judged). */
  private static final double VISIBLE_RATIO = 0.01;

  private static final double VISIBLE_K = 0.5;
  private static final double VISIBLE_PH = 0.02;

  private Sensitivities() {}

  /** A casting and what the model makes of it. */
  private record Outlook(Casting casting, FilmForecast film, double dryThroughS) {
    static Outlook of(CastingForecaster forecaster, Casting casting) {
      return new Outlook(casting, forecaster.film(casting), forecaster.dryThroughS(casting));
    }
  }

  /**
   * What each of the four ingredients moves.
   *
   * @return one sensitivity per ingredient, in their order
   */
  static List<Sensitivity> of(CastingForecaster forecaster, Casting casting) {
    Outlook now = Outlook.of(forecaster, casting);
    return SETTINGS.stream()
        .map(
            setting ->
                of(
                    Ingredient.valueOf(setting.name()),
                    now,
                    Outlook.of(forecaster, setting.set(casting, more(setting, casting)))))
        .toList();
  }

  private static Sensitivity of(Ingredient ingredient, Outlook now, Outlook more) {
    // Per kilogram of the paste as it is: the grams of all others are the same in both.
    double from = now.casting().composition().amount(ingredient);
    double share = more.casting().composition().amount(ingredient);
    return new Sensitivity(
        ingredient,
        from,
        (1 - from) * share / (1 - share),
        now.dryThroughS(),
        more.dryThroughS(),
        Arrays.stream(FilmProperty.values())
            .map(property -> effect(ingredient, property, now, more))
            .toList());
  }

  private static PropertyEffect effect(
      Ingredient ingredient, FilmProperty property, Outlook now, Outlook more) {
    double from = property.of(now.film()).middle();
    double to = property.of(more.film()).middle();
    return new PropertyEffect(
        property,
        from,
        to,
        visible(property, from, to) ? Optional.empty() : Optional.of(reason(ingredient, property)));
  }

  private static double more(Setting setting, Casting casting) {
    double now = setting.of(casting);
    return switch (setting) {
      case GLYCEROL -> now == 0 ? FIRST_GLYCEROL_PER_STARCH : MORE * now;
      case VINEGAR ->
          now == 0 ? FIRST_ACID_PER_PASTE / casting.composition().dryStarch() : MORE_VINEGAR * now;
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
