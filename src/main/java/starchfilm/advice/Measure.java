package starchfilm.advice;

/**
 * What the model says of a kind of trouble: a figure above 0 that grows with it; one row of the
 * table of measures.
 *
 * <p>The trouble of a figure m is {@code u = ln(m/harmless)/ln(clear/harmless)}: 0 where the figure
 * is harmless, 1 where the trouble is likely. The limits of cracking and mould are those between
 * the levels of {@link starchfilm.film.risk.RiskLevel}; all others are judged, no source.
 *
 * @param name what the rules call it
 * @param words the figure in a sentence, a clause with the names of figures in braces
 * @param moved what a change does to the figure, likewise
 * @param needsTime whether it can be stated only where it is known when the plate was looked at
 * @param isSideEffect whether a change that is to help may bring it
 */
record Measure(
    String name,
    AdviceFigure figure,
    double harmless,
    double clear,
    String words,
    String moved,
    boolean needsTime,
    boolean isSideEffect) {
  /** The cause's own figure against its own limits; the model computes no such trouble. */
  static final Measure OWN_FIGURE =
      new Measure(
          "own figure",
          AdviceFigure.STIRRING,
          1,
          Math.E,
          "the model computes no such trouble",
          "",
          false,
          false);

  /** Whether the model computes it. */
  boolean isOfModel() {
    return !name.equals(OWN_FIGURE.name);
  }

  /** The figure in a sentence, a clause. */
  String words(FaultContext scene) {
    return Sentence.in(words, scene);
  }

  /** What a change does to the figure, a clause. */
  String moved(FaultContext before, FaultContext after) {
    return Sentence.in(moved, before, after);
  }

  /** The trouble of a figure: 0 harmless, 1 likely, linear in its logarithm. */
  double trouble(double of) {
    return Math.max(0, Math.log(of / harmless) / Math.log(clear / harmless));
  }

  double trouble(FaultContext scene) {
    return trouble(figure.of(scene));
  }
}
