package starchfilm.planning;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.PlanSearch.Found;

/**
 * Pours what a search found as thick as its date allows, rounds it to the balance, and forecasts in
 * full what was rounded.
 */
record Finisher(PlanRequest request, DryingForecaster drying) {
  /** How far (log) a recipe at its date may be from the real forecast before it is corrected. */
  private static final double NEAR_DATE = 0.03;

  private static final int MOST_STEPS = 3;

  private static final FilmForecaster FILM = new FilmForecaster();

  Finisher(PlanRequest request, ParameterDistribution factors) {
    this(request, new DryingForecaster(factors, DryingForecaster.DRAWS));
  }

  PlannedRecipe finish(Found found) {
    Design design = inTime(found);
    return finish(
        design, new Rounding(request, design, design.cook(), true), found.space().window());
  }

  /** The groups of a series, in which one thing alone is changed. */
  List<Series.Group> groups(Found found, SeriesRequest series) {
    Design base = inTime(found).on(series.platesEach());
    return IntStream.range(0, series.values().size())
        .parallel()
        .mapToObj(group -> group(base, series, group, found.space().window()))
        .toList();
  }

  private Series.Group group(Design base, SeriesRequest series, int group, WishWindow window) {
    double value = series.values().get(group);
    Design design = series.what().in(base, value, request);
    CookSteps cook = series.what().in(base.cook(), value);
    PlannedRecipe recipe = finish(design, new Rounding(request, design, cook, false), window);
    double weighed = series.what().of(recipe.potfuls().get(0).recipe(), recipe.casting());
    return new Series.Group(series.names().get(group), value, weighed, recipe);
  }

  /** A recipe poured as thick as its date allows, by the real forecast and not by the surface. */
  private Design inTime(Found found) {
    Candidate candidate = found.candidate();
    Design design = found.design();
    OptionalDouble byS = request.byS();
    boolean atDate =
        candidate.ceiling() == Limit.DATE
            && Math.log(candidate.ceilingM() / design.wetThicknessM()) < NEAR_DATE;
    if (byS.isEmpty() || !atDate) {
      return design;
    }
    double wetM = design.wetThicknessM();
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] ready = drying.readyS(request.casting(design.poured(wetM)), Spot.THICK_SPOT);
      double late = Math.log(Quantiles.of(ready, request.sure()) / byS.getAsDouble());
      if (!Double.isFinite(late)) {
        break;
      }
      wetM *= Math.exp(-late / candidate.timeSlope());
      if (Math.abs(late) < NEAR_DATE) {
        break;
      }
    }
    double otherwiseM =
        candidate.ceilings().keySet().stream()
            .filter(limit -> limit != Limit.DATE)
            .mapToDouble(candidate::ceilingM)
            .min()
            .orElse(wetM);
    return design.poured(Math.max(candidate.floorM(), Math.min(otherwiseM, wetM)));
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
    FilmForecast forecast = FILM.forecast(casting);
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
