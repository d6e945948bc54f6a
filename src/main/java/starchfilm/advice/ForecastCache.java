package starchfilm.advice;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.Use;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;
import starchfilm.film.risk.PlateRisks;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.numerics.evidence.Band;

/**
 * What the model makes of one set-up in its middle case, each figure computed when first asked for.
 * One object serves one thread.
 */
final class ForecastCache {
  private final Trial trial;
  private final Casting setup;
  private final TrialKnowledge knowledge;
  private final CastingForecaster forecaster;
  private final Map<Spot, ToDoubleFunction<Milestone>> timesS = new EnumMap<>(Spot.class);
  private final FilmForecast film;
  private @Nullable PlateRisks risks;

  /** The trial as it was cast. */
  ForecastCache(Trial trial, TrialKnowledge knowledge) {
    this(trial, trial.casting(), knowledge);
  }

  private ForecastCache(Trial trial, Casting setup, TrialKnowledge knowledge) {
    this.trial = trial;
    this.setup = setup;
    this.knowledge = knowledge;
    this.forecaster = knowledge.changed(trial, setup);
    this.film = forecaster.film(setup);
  }

  /** The same model's view of another set-up. */
  ForecastCache of(Casting other) {
    return new ForecastCache(trial, other, knowledge);
  }

  Casting setup() {
    return setup;
  }

  FilmForecast film() {
    return film;
  }

  PlateRisks risks() {
    PlateRisks known = risks;
    if (known == null) {
      known = forecaster.risks(setup);
      risks = known;
    }
    return known;
  }

  /**
   * When a milestone comes.
   *
   * @return time since the pour (s); twice the longest time that is followed where it does not come
   *     within that, so that plates that never dry can still be held against each other
   */
  double timeS(Spot spot, Milestone milestone) {
    double timeS =
        timesS
            .computeIfAbsent(spot, one -> forecaster.middleCaseS(setup, one))
            .applyAsDouble(milestone);
    return Math.min(2 * DryingForecaster.HORIZON_S, timeS);
  }

  /** When the thick spot is dry through (s since the pour), with its range. */
  Band dryThroughS() {
    return forecaster.drying(setup, Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
  }

  /** How far the film stretches at rest with some air. */
  double stretchAtRest(double relativeHumidity, double temperatureK) {
    Use air = new Use(relativeHumidity, temperatureK, 0);
    return forecaster.film(setup.with(air)).elongationAtBreak().middle();
  }
}
