package starchfilm.planning;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;

/** Rounds a design to the balance and forecasts in full what was rounded. */
final class Finisher {
  private final PlanRequest request;
  private final DryingForecaster drying;
  private final FilmForecaster film = new FilmForecaster();

  Finisher(PlanRequest request, ParameterDistribution factors) {
    this.request = request;
    this.drying = new DryingForecaster(factors, DryingForecaster.DRAWS);
  }

  PlannedRecipe finish(Design design, WishWindow window) {
    return finish(design, new Rounding(request, design, design.cook(), true), window);
  }

  /** One group of a series, in which one thing alone is changed. */
  Series.Group group(Design base, SeriesRequest series, int group, WishWindow window) {
    double value = series.values().get(group);
    Design design = series.what().in(base, value, request);
    CookSteps cook = series.what().in(base.cook(), value);
    PlannedRecipe recipe = finish(design, new Rounding(request, design, cook, false), window);
    double weighed = series.what().of(recipe.potfuls().get(0).recipe(), recipe.casting());
    return new Series.Group(series.names().get(group), value, weighed, recipe);
  }

  private PlannedRecipe finish(Design design, Rounding rounding, WishWindow window) {
    List<Potful> potfuls = rounding.potfuls();
    double pourKg = rounding.pourKg();
    Recipe recipe = potfuls.get(0).recipe();
    Paste paste = Paste.cooked(recipe);
    double wetM =
        pourKg / (request.kitchen().plate().areaM2() * paste.composition().pasteDensityKgPerM3());
    double wetSd = wetM * request.kitchen().scaleStepKg() / Math.sqrt(12) / pourKg;
    Casting casting =
        request.casting(paste, recipe.cook(), new Estimate(wetM, wetSd), design.plates());
    FilmForecast forecast = film.forecast(casting);
    return new PlannedRecipe(
        EnumSet.noneOf(Goal.class),
        potfuls,
        rounding.cook(),
        casting,
        forecast,
        drying.forecast(casting),
        new PlannedRecipe.Chances(
            byDate(casting),
            WishWindow.meets(request.wish(), forecast),
            window.chance(forecast.glassTransitionK())),
        List.of());
  }

  private OptionalDouble byDate(Casting casting) {
    if (request.byS().isEmpty()) {
      return OptionalDouble.empty();
    }
    double byS = request.byS().getAsDouble();
    double[] ready = drying.readyS(casting, Spot.THICK_SPOT);
    return OptionalDouble.of(
        (double) Arrays.stream(ready).filter(time -> time <= byS).count() / ready.length);
  }
}
