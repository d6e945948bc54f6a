package starchfilm.forecast;

import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.forecast.TrialForecast.OwnWeighings;

/**
 * Forecasts a whole trial: the film, the drying and its risks.
 *
 * <p>Safe to share between threads.
 *
 * @param knowledge what is known before a trial is forecast
 */
public record TrialForecaster(TrialKnowledge knowledge) {
  /**
   * Returns the forecaster of the castings of one trial, as it is and changed.
   *
   * @param trial the trial
   * @return a forecaster with what is known of it
   * @throws IllegalArgumentException where a figure lies outside what the model can do; the message
   *     is a sentence for the reader
   */
  public CastingForecaster knowing(Trial trial) {
    return new CastingForecaster(
        knowledge.drying(trial), new FilmForecaster(knowledge.film(trial)));
  }

  /**
   * Forecasts a trial.
   *
   * @param trial the trial
   * @return its film, drying and risks
   * @throws IllegalArgumentException where a figure lies outside what the model can do; the message
   *     is a sentence for the reader
   */
  public TrialForecast forecast(Trial trial) {
    return forecast(trial, knowing(trial));
  }

  /**
   * Forecasts a trial with what is known of it.
   *
   * @param trial the trial
   * @param known what forecasts its castings, from {@link #knowing}
   * @return its film, drying and risks; figures of a film that was scorched are withheld
   */
  public TrialForecast forecast(Trial trial, CastingForecaster known) {
    Casting casting = trial.casting();
    return new TrialForecast(
        trial,
        known.films().forecast(casting, trial.seen().hasFault(FaultKind.SCORCHED)),
        known.drying(casting),
        known.risks(casting),
        new OwnWeighings(known.known(), atThePour(trial)));
  }

  private Optional<DryingForecast> atThePour(Trial trial) {
    return trial.weighingCount() == 0
        ? Optional.empty()
        : Optional.of(knowledge.atThePour(trial).forecaster().forecast(trial.casting()));
  }
}
