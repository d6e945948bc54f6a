package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.SpotForecast;
import starchfilm.film.FilmForecast;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.numerics.evidence.Band;

/**
 * What the model expects of a set-up, with bands.
 *
 * @param thickSpot how a plate dries where it is wettest
 * @param film what the film will be like
 * @param risks how it may crack or mould
 */
public record Expectation(SpotForecast thickSpot, FilmForecast film, PlateRisks risks) {
  /** A change of the middle by less than this is not told (ratio; judged). */
  private static final double VISIBLE = 0.05;

  static Expectation of(ForecastCache outlook, Knowledge knowledge, int draws) {
    Casting setup = outlook.setup();
    return new Expectation(
        new DryingForecaster(knowledge.of(setup), draws).forecast(setup, Spot.THICK_SPOT),
        outlook.film(),
        outlook.risks());
  }

  /**
   * When a milestone comes where the plate is wettest.
   *
   * @param milestone which
   * @return time since the pour (s), 10, 50 and 90 %
   */
  public Band thickSpotS(Milestone milestone) {
    return thickSpot.at(milestone).timeS();
  }

  /** What is different in another expectation, in the order people ask; may be empty. */
  List<Effect> changesTo(Expectation after) {
    List<Effect> effects = new ArrayList<>();
    Band dryThrough = thickSpotS(Milestone.DRY_THROUGH);
    Band dryThroughAfter = after.thickSpotS(Milestone.DRY_THROUGH);
    if (moved(dryThrough, dryThroughAfter)) {
      effects.add(new Effect("dry through", Told.span(dryThrough), Told.span(dryThroughAfter)));
    }
    add(effects, "cracking", word(risks.crack().level()), word(after.risks.crack().level()));
    add(effects, "mould", word(risks.mould().level()), word(after.risks.mould().level()));
    add(effects, "feel", word(film.feel()), word(after.film.feel()));
    band(
        effects,
        "stretch at break",
        film.elongationAtBreak(),
        after.film.elongationAtBreak(),
        100,
        "%");
    band(
        effects,
        "tensile strength",
        film.tensileStrengthPa(),
        after.film.tensileStrengthPa(),
        1e-6,
        "MPa");
    band(effects, "dry thickness", film.dryThicknessM(), after.film.dryThicknessM(), 1e6, "µm");
    return effects;
  }

  private static void add(List<Effect> effects, String what, String before, String after) {
    if (!before.equals(after)) {
      effects.add(new Effect(what, before, after));
    }
  }

  private static void band(
      List<Effect> effects, String what, Band before, Band after, double scale, String unit) {
    if (moved(before, after)) {
      effects.add(new Effect(what, Told.band(before, scale, unit), Told.band(after, scale, unit)));
    }
  }

  private static boolean moved(Band before, Band after) {
    if (Double.isInfinite(before.middle()) || Double.isInfinite(after.middle())) {
      return before.middle() != after.middle();
    }
    return Math.abs(Math.log(after.middle() / before.middle())) > VISIBLE;
  }

  static String word(Enum<?> feel) {
    return feel.name().toLowerCase(Locale.ROOT);
  }

  static String word(RiskLevel level) {
    return switch (level) {
      case LOW -> "not expected";
      case WATCH -> "possible";
      case LIKELY -> "likely";
      case EXPECTED -> "expected";
    };
  }
}
