package starchfilm.forecast;

import java.util.function.ToDoubleFunction;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.Milestone;
import starchfilm.drying.SpotForecast;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.film.risk.PlateRisks;

/**
 * Forecasts film, drying and risks of castings of which the same is known: one trial's, and what
 * changes make of it.
 *
 * @param known what is known of drying
 * @param films forecasts film, with what strips taught
 */
public record CastingForecaster(PlateParameters known, FilmForecaster films) {
  /** What the dry film will be like. */
  public FilmForecast film(Casting casting) {
    return films.forecast(casting);
  }

  /** How a plate dries. */
  public DryingForecast drying(Casting casting) {
    return known.forecaster().forecast(casting);
  }

  /** How a plate may crack or mould, in the middle case. */
  public PlateRisks risks(Casting casting) {
    return PlateRisks.of(casting, known.factors());
  }

  /** How one spot of a plate dries. */
  public SpotForecast drying(Casting casting, Spot spot) {
    return known.forecaster().forecast(casting, spot);
  }

  /** When a milestone comes at a spot in the middle case (s); infinite where it never does. */
  public ToDoubleFunction<Milestone> middleCaseS(Casting casting, Spot spot) {
    return known.forecaster().middleCaseS(casting, spot);
  }

  /** When the thick spot is dry through in the middle case (s); infinite where it never is. */
  public double dryThroughS(Casting casting) {
    return middleCaseS(casting, Spot.THICK_SPOT).applyAsDouble(Milestone.DRY_THROUGH);
  }
}
