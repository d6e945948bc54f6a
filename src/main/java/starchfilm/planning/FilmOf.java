package starchfilm.planning;

import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;

/**
 * Forecasts the film of a design for one request, its composition taken as exact: a search compares
 * middles. Safe to share between threads.
 */
final class FilmOf {
  private final PlanRequest request;
  private final FilmForecaster forecaster = new FilmForecaster();

  FilmOf(PlanRequest request) {
    this.request = request;
  }

  FilmForecast forecast(Design design) {
    return forecaster.forecast(request.casting(design));
  }
}
