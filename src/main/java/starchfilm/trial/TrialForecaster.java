package starchfilm.trial;

import java.util.List;
import java.util.function.Function;
import starchfilm.drying.DryingCase;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.FactorModel;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateRisks;
import starchfilm.drying.RiskForecaster;
import starchfilm.drying.Spot;
import starchfilm.film.FilmCase;
import starchfilm.film.FilmForecaster;
import starchfilm.film.Lever;
import starchfilm.film.Levers;
import starchfilm.recipe.Composition;
import starchfilm.recipe.Paste;
import starchfilm.trial.TrialForecast.PulledLever;

/**
 * Forecasts a whole trial: the film, the drying, its risks, and what more of each ingredient would
 * do.
 *
 * <p>Immutable; safe to share between threads.
 */
public final class TrialForecaster {
  private final FactorModel factors;
  private final int draws;
  private final FilmForecaster film = new FilmForecaster();
  private final Levers levers = new Levers(film);

  /**
   * A forecaster.
   *
   * @param factors what is known of the drying factors
   * @param draws how many likely cases a drying forecast solves
   */
  public TrialForecaster(FactorModel factors, int draws) {
    this.factors = factors;
    this.draws = draws;
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
    Paste paste = Paste.cooked(trial.recipe());
    Composition composition = paste.composition();
    FilmCase filmCase = filmCase(trial, paste, composition);
    DryingCase dryingCase = dryingCase(trial, paste, composition);
    DryingForecaster drying = new DryingForecaster(trial.roomDoubt().addedTo(factors), draws);
    return new TrialForecast(
        trial,
        paste,
        composition,
        film.forecast(filmCase),
        drying.forecast(dryingCase),
        new RiskForecaster(factors).forecast(dryingCase),
        pulled(trial, paste, levers.of(filmCase), drying));
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
    return withoutLevers(trial, new RiskForecaster(factors)::forecast);
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
    return withoutLevers(trial, new RiskForecaster(factors)::withoutRemedies);
  }

  private TrialForecast withoutLevers(Trial trial, Function<DryingCase, PlateRisks> risks) {
    Paste paste = Paste.cooked(trial.recipe());
    Composition composition = paste.composition();
    DryingCase dryingCase = dryingCase(trial, paste, composition);
    return new TrialForecast(
        trial,
        paste,
        composition,
        film.forecast(filmCase(trial, paste, composition)),
        new DryingForecaster(trial.roomDoubt().addedTo(factors), draws).forecast(dryingCase),
        risks.apply(dryingCase),
        List.of());
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
    Paste paste = Paste.cooked(trial.recipe());
    return new DryingForecaster(trial.roomDoubt().addedTo(factors), draws)
        .forecast(dryingCase(trial, paste, paste.composition()));
  }

  private static List<PulledLever> pulled(
      Trial trial, Paste paste, List<Lever> filmLevers, DryingForecaster forecaster) {
    double nowS = dryThroughS(forecaster, dryingCase(trial, paste, paste.composition()));
    return filmLevers.stream()
        .map(
            lever ->
                new PulledLever(
                    lever,
                    nowS,
                    dryThroughS(
                        forecaster, dryingCase(trial, paste, lever.pulled(paste.composition())))))
        .toList();
  }

  private static double dryThroughS(DryingForecaster forecaster, DryingCase plate) {
    return forecaster.middleCaseS(plate, Spot.THICK_SPOT, Milestone.DRY_THROUGH);
  }

  private static FilmCase filmCase(Trial trial, Paste paste, Composition composition) {
    return new FilmCase(
        composition,
        paste.plasticiserRelativeSd(),
        paste.solidsRelativeSd(),
        trial.recipe().cook(),
        trial.pour().wetThicknessM(),
        trial.use().relativeHumidity(),
        trial.use().temperatureK(),
        trial.use().ageS());
  }

  private static DryingCase dryingCase(Trial trial, Paste paste, Composition composition) {
    return new DryingCase(
        composition,
        paste.solidsRelativeSd(),
        paste.plasticiserRelativeSd(),
        trial.plate(),
        trial.pour(),
        trial.room(),
        trial.benchTemperatureK(),
        trial.faces());
  }
}
