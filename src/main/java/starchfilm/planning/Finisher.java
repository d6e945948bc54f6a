package starchfilm.planning;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import starchfilm.casting.DryingCase;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.ReadyTimes;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmCase;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;

/** Rounds a design to the balance and forecasts in full what was rounded. */
final class Finisher {
  private final PlanRequest request;
  private final DryingForecaster drying;
  private final ReadyTimes times;
  private final FilmForecaster film = new FilmForecaster();

  Finisher(PlanRequest request, ParameterDistribution factors) {
    this.request = request;
    this.drying = new DryingForecaster(factors, DryingForecaster.CAREFUL_DRAWS);
    this.times = new ReadyTimes(factors, DryingForecaster.CAREFUL_DRAWS);
  }

  PlannedRecipe finish(
      Design design, Set<Goal> goals, WishWindow window, List<BindingLimit> limits) {
    Rounded rounded = rounded(design);
    DryingCase dryingCase =
        new DryingCase(
            rounded.paste().composition(),
            rounded.paste().solidsRelativeSd(),
            rounded.paste().plasticiserRelativeSd(),
            request.kitchen().platePoured(rounded.pour().wetThicknessM().value()),
            rounded.pour(),
            request.place().room(),
            request.place().benchTemperatureK(),
            List.of());
    Composition composition = rounded.paste().composition();
    return new PlannedRecipe(
        goals,
        rounded.potfuls(),
        CookSteps.of(design.blend().shares()),
        rounded.paste(),
        dryingCase.plate(),
        rounded.pour(),
        rounded.pourKg(),
        design.plates(),
        rounded.film(),
        drying.forecast(dryingCase),
        chance(dryingCase),
        WishWindow.meets(request.wish(), rounded.film()),
        window.chance(rounded.film().glassTransitionK()),
        Levelling.of(design.blend(), composition.dryStarch(), composition.pasteDensityKgPerM3()),
        design.plates()
            * rounded.pourKg()
            * composition.drySolids()
            * (1 + rounded.film().equilibriumMoisture().middle()),
        limits);
  }

  private record Rounded(
      List<Potful> potfuls, Paste paste, double pourKg, Pour pour, FilmForecast film) {}

  private Rounded rounded(Design design) {
    Rounding rounding = new Rounding(request, design);
    List<Potful> potfuls = rounding.potfuls();
    double pourKg = rounding.pourKg();
    Paste paste = Paste.cooked(potfuls.get(0).recipe());
    double wetM =
        pourKg / (request.kitchen().plate().areaM2() * paste.composition().pasteDensityKgPerM3());
    double wetSd = wetM * request.kitchen().scaleStepKg() / Math.sqrt(12) / pourKg;
    Pour pour =
        new Pour(new Estimate(wetM, wetSd), request.kitchen().unevenness(), PotRules.POURED_AT_K);
    FilmForecast forecast = film.forecast(filmCase(potfuls.get(0), paste, pour));
    return new Rounded(potfuls, paste, pourKg, pour, forecast);
  }

  private FilmCase filmCase(Potful potful, Paste paste, Pour pour) {
    return new FilmCase(
        paste.composition(),
        paste.plasticiserRelativeSd(),
        paste.solidsRelativeSd(),
        potful.recipe().cook(),
        pour.wetThicknessM(),
        request.use().relativeHumidity(),
        request.use().temperatureK(),
        request.use().ageS());
  }

  private OptionalDouble chance(DryingCase dryingCase) {
    if (request.byS().isEmpty()) {
      return OptionalDouble.empty();
    }
    double byS = request.byS().getAsDouble();
    double[] ready = times.of(dryingCase, Spot.THICK_SPOT);
    return OptionalDouble.of(
        (double) Arrays.stream(ready).filter(time -> time <= byS).count() / ready.length);
  }
}
