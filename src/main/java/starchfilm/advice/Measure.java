package starchfilm.advice;

import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;
import starchfilm.film.PlasticiserWindow;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.MouldRisk;

/**
 * What the model says of a kind of trouble: a figure above 0 that grows with it.
 *
 * <p>The trouble of a figure m is {@code u = ln(m/harmless)/ln(clear/harmless)}: 0 where the figure
 * is harmless, 1 where the trouble is likely. The limits of cracking and mould are those between
 * the levels of {@link starchfilm.film.risk.RiskLevel}; all others are judged, no source.
 */
public enum Measure {
  /** Energy of a crack over the film's toughness; limits from low to likely. */
  CRACK_ENERGY(
      0.2,
      1,
      scene -> scene.outlook().crackRatio(),
      Measure::crack,
      moved("a crack would get %s × the energy it needs to open, instead of %s ×", Told::number)),

  /** Time to dry through over the time the plate was given; harmless where 9 in 10 are dry. */
  NOT_DRY(
      0.68,
      1,
      scene -> late(scene, Milestone.DRY_THROUGH),
      scene -> lateness(scene, Milestone.DRY_THROUGH, "dry through"),
      moved("it would be dry through in %s × the time it had, instead of %s ×", Told::number)),

  /** Time until peelable over the time the plate was given; harmless where 9 in 10 are. */
  NOT_PEELABLE(
      0.68,
      1,
      scene -> late(scene, Milestone.PEELABLE),
      scene -> lateness(scene, Milestone.PEELABLE, "peelable"),
      moved("it would be peelable in %s × the time it had, instead of %s ×", Told::number)),

  /** Hours at full growing speed of mould; limits from watch to likely. */
  MOULD_HOURS(
      24,
      48,
      scene -> scene.outlook().risks().mould().weightedHours(),
      scene -> mould(scene.outlook().risks().mould()),
      moved("mould gets the equivalent of %s hours at full speed, instead of %s", Told::number)),

  /** A stretch at break of 10 %, where film snaps, over the film's own in the drier air. */
  SNAPPING(
      0.5,
      1,
      scene -> overSnapping(stretch(scene)),
      scene ->
          "at rest in %s humidity the film stretches by %s before it breaks, and snaps below 10 %%"
              .formatted(Told.percent(scene.driestHumidity()), Told.percent(stretch(scene))),
      moved(
          "the film stretches by %s instead of %s", figure -> Told.percent(overSnapping(figure)))),

  /** Glycerol over the level above which film is tacky in the damper air. */
  TACK(
      0.85,
      1,
      scene -> Math.max(1e-3, glycerol(scene)) / tackyAbove(scene),
      scene ->
          ("in %s humidity film is tacky above %s glycerol per 100 g dry starch,"
                  + " and this has %s")
              .formatted(
                  Told.percent(scene.dampestHumidity()),
                  Told.level(tackyAbove(scene)),
                  Told.level(glycerol(scene))),
      moved("glycerol is at %s × the level where film turns tacky, instead of %s ×", Told::number)),

  /** A load of 1 N on a strip 1 cm wide over what the thin edge bears. */
  TEARING(
      0.2,
      1,
      scene -> 1 / loadOnStripN(scene),
      scene ->
          "a strip 1 cm wide from the thin edge holds %s N"
              .formatted(Told.number(loadOnStripN(scene))),
      moved(
          "a strip 1 cm wide from the thin edge holds %s N instead of %s N",
          figure -> Told.number(1 / figure))),

  /** Share of the drying time for which the thin edge is dry and the thick spot is not. */
  EDGE_AHEAD(
      0.2,
      0.5,
      scene -> Math.max(1e-3, 1 - dryS(scene, Spot.THIN_EDGE) / dryS(scene, Spot.THICK_SPOT)),
      scene ->
          "the thin edge is dry %s after the pour and the thick spot only after %s"
              .formatted(
                  Told.span(dryS(scene, Spot.THIN_EDGE)), Told.span(dryS(scene, Spot.THICK_SPOT))),
      moved(
          "the edge is ahead of the middle for %s instead of %s of the drying time",
          Told::percent)),

  /** The cause's own figure against its own limits; the model computes no such trouble. */
  OWN_FIGURE(
      1,
      Math.E,
      scene -> {
        throw new IllegalStateException("only a cause knows its own figure");
      },
      scene -> "the model computes no such trouble",
      (before, after) -> {
        throw new IllegalStateException("only a cause knows its own figure");
      });

  private static final double SNAPS_AT = 0.10;
  private static final double STRIP_M = 0.01;

  private final double harmless;
  private final double clear;
  private final ToDoubleFunction<FaultContext> figure;
  private final Function<FaultContext, String> words;
  private final BiFunction<Double, Double, String> moved;

  Measure(
      double harmless,
      double clear,
      ToDoubleFunction<FaultContext> figure,
      Function<FaultContext, String> words,
      BiFunction<Double, Double, String> moved) {
    this.harmless = harmless;
    this.clear = clear;
    this.figure = figure;
    this.words = words;
    this.moved = moved;
  }

  /** A clause that takes the figure after and before, as they are shown. */
  private static BiFunction<Double, Double, String> moved(
      String clause, DoubleFunction<String> shown) {
    return (before, after) -> clause.formatted(shown.apply(after), shown.apply(before));
  }

  /** The figure, above 0. */
  double figure(FaultContext scene) {
    return figure.applyAsDouble(scene);
  }

  /** The figure in a sentence, a clause. */
  String words(FaultContext scene) {
    return words.apply(scene);
  }

  /** What a change does to the figure, a clause. */
  String moved(double before, double after) {
    return moved.apply(before, after);
  }

  /** Whether it can be told only where it is known when the plate was looked at. */
  boolean needsTime() {
    return this == NOT_DRY || this == NOT_PEELABLE;
  }

  /**
   * The name of the measure in the table of rules.
   *
   * @return lower case, such as "crack energy"
   */
  public String tableName() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The trouble of a figure: 0 harmless, 1 likely, linear in its logarithm. */
  double trouble(double figure) {
    return Math.max(0, Math.log(figure / harmless) / Math.log(clear / harmless));
  }

  double trouble(FaultContext scene) {
    return trouble(figure(scene));
  }

  private static String crack(FaultContext scene) {
    CrackRisk crack = scene.outlook().risks().crack();
    return "film of this paste should hold up to about %s dry, and its thick spot has %s"
        .formatted(
            Told.micrometres(crack.criticalDryThicknessM()),
            Told.micrometres(crack.dryThicknessM()));
  }

  private static double late(FaultContext scene, Milestone milestone) {
    return scene.outlook().timeS(scene.spot(), milestone) / scene.seenAtS().orElseThrow();
  }

  private static String lateness(FaultContext scene, Milestone milestone, String what) {
    double seen = scene.seenAtS().orElseThrow();
    return "the %s was %s in %s likely cases %s, %s after the pour"
        .formatted(
            scene.spotName(),
            what,
            Told.chance(Chance.by(scene.forecast().at(scene.spot()).at(milestone), seen)),
            scene.fault().seenAtS().isPresent() ? "at that time" : "when last weighed",
            Told.span(seen));
  }

  private static String mould(MouldRisk mould) {
    String shows =
        Double.isInfinite(mould.growthFromS())
            ? ""
            : "; growth may show from " + Told.span(mould.growthFromS()) + " on";
    return "mould gets the equivalent of %s hours at full speed; 48 are enough%s"
        .formatted(Told.number(mould.weightedHours()), shows);
  }

  /** From a stretch at break to the figure, and back. */
  private static double overSnapping(double stretchOrFigure) {
    return SNAPS_AT / stretchOrFigure;
  }

  private static double stretch(FaultContext scene) {
    return scene
        .outlook()
        .stretchAtRest(scene.driestHumidity(), scene.setup().use().temperatureK());
  }

  private static double glycerol(FaultContext scene) {
    return scene.setup().composition().glycerolPerDryStarch();
  }

  private static double tackyAbove(FaultContext scene) {
    return PlasticiserWindow.tackyAbove(scene.dampestHumidity());
  }

  private static double loadOnStripN(FaultContext scene) {
    FilmForecast film = scene.outlook().film();
    double edge = film.dryThicknessM().middle() * (1 - scene.setup().pour().unevenness());
    return film.tensileStrengthPa().middle() * edge * STRIP_M;
  }

  private static double dryS(FaultContext scene, Spot spot) {
    return scene.outlook().timeS(spot, Milestone.DRY_THROUGH);
  }
}
