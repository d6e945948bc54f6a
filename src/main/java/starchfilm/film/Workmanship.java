package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * How far film made by hand falls short of smooth, bubble-free laboratory film.
 *
 * <p>Home film: strength and elongation times 0.7, and the factor of their bands times 1.3. Source:
 * assumed, no source. {@link #LABORATORY} leaves the rules as they are.
 *
 * @param factor what strength and elongation are multiplied by (ratio, above 0)
 * @param bandWidening what the factor of their bands is multiplied by (at least 1)
 */
public record Workmanship(double factor, double bandWidening) {
  /** Film cast at home or at school. */
  public static final Workmanship HOME = new Workmanship(0.7, 1.3);

  /** Smooth, bubble-free film, as the published tests had it. */
  public static final Workmanship LABORATORY = new Workmanship(1, 1);

  /** Where the figures for home film come from. */
  public static final Source HOME_SOURCE =
      new Source(
          "home film against laboratory film: strength and elongation times 0.7, factor of the band"
              + " times 1.3: assumed, no source",
          Check.JUDGED);

  /** Checks the figures. */
  public Workmanship {
    if (!(factor > 0) || !(bandWidening >= 1) || Double.isInfinite(factor * bandWidening)) {
      throw new IllegalArgumentException(
          "workmanship: factor "
              + factor
              + " and band widening "
              + bandWidening
              + " given, allowed above 0 and 1 or more");
    }
  }

  /** The rule's scatter, widened where workmanship acts. */
  RuleScatter widened(FilmProperty property, RuleScatter scatter) {
    return acts(property) ? RuleScatter.factor(scatter.oneSigma() * bandWidening) : scatter;
  }

  /** What the middle of a property is multiplied by. */
  double on(FilmProperty property) {
    return acts(property) ? factor : 1;
  }

  /** Where this workmanship comes from; empty for the laboratory's. */
  List<Source> sources() {
    return factor == 1 && bandWidening == 1 ? List.of() : List.of(HOME_SOURCE);
  }

  private static boolean acts(FilmProperty property) {
    return property == FilmProperty.TENSILE_STRENGTH || property == FilmProperty.ELONGATION;
  }
}
