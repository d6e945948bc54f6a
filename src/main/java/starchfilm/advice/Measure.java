package starchfilm.advice;

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
      Figure.CRACK_RATIO,
      "film of this paste should hold up to about {cracks from} dry, and its thick spot has"
          + " {thick spot}",
      "a crack would get {new crack ratio} × the energy it needs to open, instead of {old"
          + " crack ratio} ×"),

  /** Time to dry through over the time the plate was given; harmless where 9 in 10 are dry. */
  NOT_DRY(
      0.68,
      1,
      Figure.TIMES_TO_DRY,
      "{dry by then}",
      "it would be dry through in {new times to dry} × the time it had, instead of {old"
          + " times to dry} ×"),

  /** Time until peelable over the time the plate was given; harmless where 9 in 10 are. */
  NOT_PEELABLE(
      0.68,
      1,
      Figure.TIMES_TO_PEEL,
      "{peelable by then}",
      "it would be peelable in {new times to peel} × the time it had, instead of {old times"
          + " to peel} ×"),

  /** Hours at full growing speed of mould; limits from watch to likely. */
  MOULD_HOURS(
      24,
      48,
      Figure.MOULD_HOURS,
      "mould gets the equivalent of {mould hours} hours at full speed; 48 are enough{mould"
          + " shows}",
      "mould gets the equivalent of {new mould hours} hours at full speed, instead of {old"
          + " mould hours}"),

  /** A stretch at break of 10 %, where film snaps, over the film's own in the drier air. */
  SNAPPING(
      0.5,
      1,
      Figure.TO_SNAPPING,
      "at rest in {driest humidity} humidity the film stretches by {stretch} before it"
          + " breaks, and snaps below 10 %",
      "the film stretches by {new stretch} instead of {old stretch}"),

  /** Glycerol over the level above which film is tacky in the damper air. */
  TACK(
      0.85,
      1,
      Figure.TO_TACKY,
      "in {dampest humidity} humidity film is tacky above {tacky above} glycerol per 100 g"
          + " dry starch, and this has {glycerol}",
      "glycerol is at {new to tacky} × the level where film turns tacky, instead of {old to"
          + " tacky} ×"),

  /** A load of 1 N on a strip 1 cm wide over what the thin edge bears. */
  TEARING(
      0.2,
      1,
      Figure.TO_TEARING,
      "a strip 1 cm wide from the thin edge holds {strip load}",
      "a strip 1 cm wide from the thin edge holds {new strip load} instead of {old strip load}"),

  /** Share of the drying time for which the thin edge is dry and the thick spot is not. */
  EDGE_AHEAD(
      0.2,
      0.5,
      Figure.EDGE_AHEAD,
      "the thin edge is dry {dry edge} after the pour and the thick spot only after {dry"
          + " middle}",
      "the edge is ahead of the middle for {new edge ahead} instead of {old edge ahead} of"
          + " the drying time"),

  /** The cause's own figure against its own limits; the model computes no such trouble. */
  OWN_FIGURE(1, Math.E, Figure.STIRRING, "the model computes no such trouble", "");

  private final double harmless;
  private final double clear;
  private final Figure figure;
  private final String words;
  private final String moved;

  Measure(double harmless, double clear, Figure figure, String words, String moved) {
    this.harmless = harmless;
    this.clear = clear;
    this.figure = figure;
    this.words = words;
    this.moved = moved;
  }

  /** The figure, above 0. */
  double figure(FaultContext scene) {
    return figure.of(scene);
  }

  /** The figure in a sentence, a clause. */
  String words(FaultContext scene) {
    return Figure.in(words, scene);
  }

  /** What a change does to the figure, a clause. */
  String moved(FaultContext before, FaultContext after) {
    return Figure.in(moved, before, after);
  }

  /** Whether it can be stated only where it is known when the plate was looked at. */
  boolean needsTime() {
    return this == NOT_DRY || this == NOT_PEELABLE;
  }

  /** The trouble of a figure: 0 harmless, 1 likely, linear in its logarithm. */
  double trouble(double figure) {
    return Math.max(0, Math.log(figure / harmless) / Math.log(clear / harmless));
  }

  double trouble(FaultContext scene) {
    return trouble(figure(scene));
  }
}
