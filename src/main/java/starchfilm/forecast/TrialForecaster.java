package starchfilm.forecast;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.film.Lever;
import starchfilm.film.Levers;
import starchfilm.film.Withheld;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskForecaster;
import starchfilm.forecast.TrialForecast.OwnWeighings;
import starchfilm.forecast.TrialForecast.PulledLever;
import starchfilm.material.recipe.Paste;

/**
 * Forecasts a whole trial: the film, the drying, its risks, and what more of each ingredient would
 * do.
 *
 * <p>Immutable; safe to share between threads.
 */
public final class TrialForecaster {
  private final TrialKnowledge knowledge;
  private final int draws;

  /**
   * A forecaster.
   *
   * @param knowledge what is known before a trial is forecast
   * @param draws how many likely cases a drying forecast solves
   */
  public TrialForecaster(TrialKnowledge knowledge, int draws) {
    this.knowledge = knowledge;
    this.draws = draws;
  }

  /**
   * A forecaster that knows the same of every trial.
   *
   * @param factors what is known of the drying factors
   * @param draws how many likely cases a drying forecast solves
   */
  public TrialForecaster(ParameterDistribution factors, int draws) {
    this(TrialKnowledge.of(factors), draws);
  }

  /**
   * Forecasts a trial.
   *
   * @param trial the trial
   * @return everything the program makes of it
   * @throws IllegalArgumentException where a figure lies outside what the model can do; the message
   *     is a sentence for the reader
   */
  public TrialForecast forecast(Trial trial) {
    PlateParameters known = knowledge.drying(trial);
    FilmForecaster film = new FilmForecaster(knowledge.film(trial));
    Casting plate = trial.casting();
    List<Lever> levers = new Levers(film).of(trial.casting());
    return of(
        trial,
        known,
        film,
        RiskForecaster::forecast,
        pulled(plate, levers, known.forecaster(draws)));
  }

  /**
   * Forecasts a trial without what more of each ingredient would do, which is most of the work; for
   * a recipe that is still being moved about.
   *
   * @param trial the trial
   * @return its film, drying and risks, and no levers
   * @throws IllegalArgumentException where a figure lies outside what the model can do; the message
   *     is a sentence for the reader
   */
  public TrialForecast sketch(Trial trial) {
    return of(
        trial,
        knowledge.drying(trial),
        new FilmForecaster(knowledge.film(trial)),
        RiskForecaster::forecast,
        List.of());
  }

  /**
   * Forecasts a trial at the least cost, for hundreds of them at once: also without what would
   * lower its risks.
   *
   * @param trial the trial
   * @return its film, drying and the levels of its risks
   * @throws IllegalArgumentException where a figure lies outside what the model can do; the message
   *     is a sentence for the reader
   */
  public TrialForecast outline(Trial trial) {
    return of(
        trial,
        knowledge.drying(trial),
        new FilmForecaster(knowledge.film(trial)),
        RiskForecaster::withoutRemedies,
        List.of());
  }

  private TrialForecast of(
      Trial trial,
      PlateParameters known,
      FilmForecaster film,
      BiFunction<RiskForecaster, Casting, PlateRisks> risks,
      List<PulledLever> levers) {
    Paste paste = trial.casting().paste();
    Casting plate = trial.casting();
    return new TrialForecast(
        trial,
        paste,
        paste.composition(),
        film(film, trial),
        known.forecaster(draws).forecast(plate),
        risks.apply(new RiskForecaster(known.factors()), plate),
        levers,
        trial.seen().weighings().isEmpty() ? OwnWeighings.NONE : weighed(trial, known));
  }

  private OwnWeighings weighed(Trial trial, PlateParameters known) {
    return new OwnWeighings(
        known.weighings(),
        known.questions(),
        Optional.of(knowledge.atThePour(trial).forecaster(draws).forecast(trial.casting())));
  }

  private static FilmForecast film(FilmForecaster film, Trial trial) {
    FilmForecast sound = film.forecast(trial.casting());
    return trial.seen().faults().stream()
            .anyMatch(fault -> fault.kind() == ObservedFault.Kind.SCORCHED)
        ? sound.withholding(Withheld.SCORCHED)
        : sound;
  }

  /**
   * Forecasts only how a trial's plates dry.
   *
   * @param trial the trial
   * @return its drying
   * @throws IllegalArgumentException where a figure lies outside what the model can do; the message
   *     is a sentence for the reader
   */
  public DryingForecast drying(Trial trial) {
    return knowledge.drying(trial).forecaster(draws).forecast(trial.casting());
  }

  private static List<PulledLever> pulled(
      Casting plate, List<Lever> filmLevers, DryingForecaster forecaster) {
    double nowS = dryThroughS(forecaster, plate);
    return filmLevers.stream()
        .map(
            lever ->
                new PulledLever(
                    lever,
                    nowS,
                    dryThroughS(forecaster, plate.with(lever.pulled(plate.composition())))))
        .toList();
  }

  private static double dryThroughS(DryingForecaster forecaster, Casting plate) {
    return forecaster.middleCaseS(plate, Spot.THICK_SPOT, Milestone.DRY_THROUGH);
  }
}
