package starchfilm.planning;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;
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

  PlannedRecipe finish(
      Design design, Set<Goal> goals, WishWindow window, List<BindingLimit> limits) {
    return finish(design, CookSteps.of(design.blend().shares()), goals, window, limits);
  }

  PlannedRecipe finish(
      Design design,
      CookSteps cook,
      Set<Goal> goals,
      WishWindow window,
      List<BindingLimit> limits) {
    Rounding rounding = new Rounding(request, design, cook, !goals.isEmpty());
    List<Potful> potfuls = rounding.potfuls();
    double pourKg = rounding.pourKg();
    Paste paste = Paste.cooked(potfuls.get(0).recipe());
    Composition composition = paste.composition();
    double wetM = pourKg / (request.kitchen().plate().areaM2() * composition.pasteDensityKgPerM3());
    double wetSd = wetM * request.kitchen().scaleStepKg() / Math.sqrt(12) / pourKg;
    Casting casting =
        request.casting(
            paste, potfuls.get(0).recipe().cook(), new Estimate(wetM, wetSd), design.plates());
    FilmForecast forecast = film.forecast(casting);
    return new PlannedRecipe(
        goals,
        potfuls,
        cook,
        casting,
        pourKg,
        forecast,
        drying.forecast(casting),
        new PlannedRecipe.Chances(
            byDate(casting),
            WishWindow.meets(request.wish(), forecast),
            window.chance(forecast.glassTransitionK())),
        Levelling.of(design.blend(), composition.dryStarch(), composition.pasteDensityKgPerM3()),
        design.plates()
            * pourKg
            * composition.drySolids()
            * (1 + forecast.equilibriumMoisture().middle()),
        limits);
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
