package starchfilm.advice;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.Use;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskForecaster;

/**
 * What the model makes of one set-up in its middle case, each figure computed when first asked for.
 * One object serves one thread.
 */
final class ForecastCache {
  private final Casting setup;
  private final Knowledge knowledge;
  private final DryingForecaster drying;
  private final Map<Spot, ToDoubleFunction<Milestone>> timesS = new EnumMap<>(Spot.class);
  private @Nullable FilmForecast film;
  private @Nullable PlateRisks risks;

  ForecastCache(Casting setup, Knowledge knowledge) {
    this.setup = setup;
    this.knowledge = knowledge;
    this.drying = new DryingForecaster(knowledge.of(setup), DryingForecaster.DRAWS);
  }

  /** The same model's view of another set-up. */
  ForecastCache of(Casting other) {
    return new ForecastCache(other, knowledge);
  }

  Casting setup() {
    return setup;
  }

  FilmForecast film() {
    FilmForecast known = film;
    if (known == null) {
      known = knowledge.film(setup).forecast(setup);
      film = known;
    }
    return known;
  }

  PlateRisks risks() {
    PlateRisks known = risks;
    if (known == null) {
      known = new RiskForecaster(knowledge.of(setup)).forecast(setup);
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
            .computeIfAbsent(spot, one -> drying.middleCaseS(setup, one))
            .applyAsDouble(milestone);
    return Math.min(2 * DryingForecaster.HORIZON_S, timeS);
  }

  /** Energy of a crack over the film's toughness, at most. */
  double crackRatio() {
    return risks().crack().energyOverToughness();
  }

  /** How far the film stretches at rest with some air. */
  double stretchAtRest(double relativeHumidity, double temperatureK) {
    Use air = new Use(relativeHumidity, temperatureK, 0);
    return knowledge.film(setup).forecast(setup.with(air)).elongationAtBreak().middle();
  }
}
