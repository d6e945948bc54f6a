package starchfilm.planning;

import starchfilm.film.FilmCase;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.numerics.evidence.Estimate;

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
    return forecaster.forecast(
        new FilmCase(
            design.composition(request.supplies()),
            0,
            CookSteps.of(design.blend().shares()).cook(Estimate.exact(0)),
            Estimate.exact(design.wetThicknessM()),
            request.use().relativeHumidity(),
            request.use().temperatureK(),
            request.use().ageS()));
  }
}
