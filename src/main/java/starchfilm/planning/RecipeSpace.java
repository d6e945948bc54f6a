package starchfilm.planning;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import starchfilm.drying.DryingForecaster;
import starchfilm.film.FilmForecast;
import starchfilm.material.recipe.Composition;

/**
 * The recipes that one blend, one request and one number of plates allow, as a cube: starch
 * concentration, plasticiser level, vinegar and wet thickness, each from 0 to 1.
 *
 * <p>The thickness runs between what every other limit leaves for the first three, so that each
 * point of the cube either is a recipe that can be made or says by how much it cannot.
 *
 * @param mostStarch upper end of the starch concentration (kg per kg paste)
 */
record RecipeSpace(
    PlanRequest request,
    StarchBlend blend,
    DryingSurface surface,
    WishWindow window,
    int plates,
    double mostStarch) {
  static final int DIMENSIONS = 4;

  /** Vinegar at most (kg per kg paste); common practice, no source. */
  private static final double MOST_VINEGAR = 0.08;

  /** The outer tenth of the wish is left alone on either side. */
  private static final double OUTER_SHARE = 0.1;

  /** The film is forecast for this pour (m); its thickness goes with the pour. */
  static final double ANY_THICKNESS_M = 1e-3;

  /** Share of a rim that may be filled. */
  private static final double RIM_FILLED = 0.9;

  private static final double[] PLATES_LATTICE = {0, 0.25, 0.5, 0.75, 1};

  /** A plate that lacks a millionth of its glycerol is full. */
  private static final double SLACK = 1e-6;

  /** The window without its outer parts. */
  WishWindow innerWindow() {
    return window.narrowed(OUTER_SHARE);
  }

  /** The recipe at a point of the cube. */
  Candidate at(double[] point) {
    double starch = between(blend.castFrom(), mostStarch, point[0]);
    WishWindow inner = innerWindow();
    double plasticiser = between(inner.from(), inner.to(), point[1]);
    double vinegar = request.supplies().vinegarAcidityFraction() > 0 ? point[2] * MOST_VINEGAR : 0;
    Design any = new Design(blend, starch, plasticiser, vinegar, ANY_THICKNESS_M, plates);
    FilmForecast forecast = request.film(any);
    double dryPerWet = forecast.dryThicknessM().middle() / ANY_THICKNESS_M;
    double floor = Math.max(surface.thinnestM(), request.wish().leastDryThicknessM() / dryPerWet);
    Map<Limit, Double> ceilings = ceilings(any, dryPerWet);
    double ceiling = Collections.min(ceilings.values());
    double gap = ceiling < floor ? Math.log(floor / Math.max(1e-9, ceiling)) : 0;
    double wet = gap > 0 ? floor : Math.exp(between(Math.log(floor), Math.log(ceiling), point[3]));
    Design design = any.poured(wet);
    return new Candidate(
        design,
        forecast,
        gap,
        ceilings,
        floor,
        surface.middleS(design),
        surface.slope(design),
        surface.chance(design, latestS()),
        window.chance(forecast.glassTransitionK()),
        filmKg(design, forecast));
  }

  /** The date; without one the film must still be ready some day. */
  private double latestS() {
    return request.byS().orElse(DryingForecaster.HORIZON_S);
  }

  /** The thickest pour (m) that each limit allows. */
  private Map<Limit, Double> ceilings(Design design, double dryPerWet) {
    Composition paste = design.composition(request.supplies());
    Kitchen kitchen = request.kitchen();
    double density = paste.pasteDensityKgPerM3();
    double plateKgPerM = kitchen.plate().areaM2() * density * (1 + PotShare.LEFT_IN_POT);
    Map<Limit, Double> ceilings = new EnumMap<>(Limit.class);
    ceilings.put(
        Limit.THICKEST_FILM,
        Math.min(surface.thickestM(), request.wish().mostDryThicknessM() / dryPerWet));
    ceilings.put(
        Limit.RIM,
        kitchen.rimM() > 0
            ? RIM_FILLED * kitchen.rimM() / (1 + kitchen.unevenness())
            : Levelling.standsUpToM(density));
    ceilings.put(
        Limit.POT,
        kitchen.potM3() * Kitchen.HOLDS_KG_PER_M3 / (plateKgPerM * PotRules.withSteam(paste)));
    if (paste.glycerol() > 0) {
      ceilings.put(
          Limit.GLYCEROL,
          request.supplies().pureGlycerolKg() / (plates * plateKgPerM * paste.glycerol()));
    }
    ceilings.put(Limit.STARCH, blend.mostDryKg() / (plates * plateKgPerM * paste.dryStarch()));
    ceilings.put(Limit.DATE, surface.thickestReady(design, latestS(), request.sure()));
    return ceilings;
  }

  /**
   * The most plates the cupboard fills, of a space for one plate.
   *
   * @return 0 where not even one can be poured
   */
  int mostPlates() {
    int most = 0;
    for (double starch : PLATES_LATTICE) {
      for (double plasticiser : PLATES_LATTICE) {
        // Without vinegar and at the floor, every other limit leaves the most room.
        Candidate candidate = at(new double[] {starch, plasticiser, 0, 0});
        if (candidate.isPossible()) {
          double suppliesM =
              Math.min(candidate.ceilingM(Limit.GLYCEROL), candidate.ceilingM(Limit.STARCH));
          double plates = suppliesM / candidate.floorM() + SLACK;
          most = Math.max(most, (int) Math.min(request.kitchen().plates(), Math.floor(plates)));
        }
      }
    }
    return most;
  }

  /** What a recipe gives, its chance measured by the date of another request. */
  RecipeOutcome outcome(Candidate candidate, PlanRequest dated) {
    Design design = candidate.design();
    Composition paste = design.composition(request.supplies());
    double potfulKg = request.pouredKg(design) * (1 + PotShare.LEFT_IN_POT);
    double glycerolFraction = request.supplies().jar().glycerolFraction().value();
    return new RecipeOutcome(
        plates,
        design.plasticiser(),
        candidate.dryThicknessM(),
        candidate.filmKg(),
        candidate.readyS(),
        surface.readyS(design, dated.sure()),
        dated.byS().isPresent() ? surface.chance(design, dated.byS().getAsDouble()) : 1,
        candidate.wishChance(),
        glycerolFraction > 0 ? plates * potfulKg * paste.glycerol() / glycerolFraction : 0,
        plates * potfulKg * paste.dryStarch(),
        potfulKg * PotRules.withSteam(paste) / Kitchen.HOLDS_KG_PER_M3);
  }

  private double filmKg(Design design, FilmForecast forecast) {
    return plates
        * request.pouredKg(design)
        * design.composition(request.supplies()).drySolids()
        * (1 + forecast.equilibriumMoisture().middle());
  }

  private static double between(double from, double to, double share) {
    return from + (to - from) * share;
  }
}
