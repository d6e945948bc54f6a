package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * A property of film that follows one state alone: x = T - Tg, how far the film lies above its
 * glass transition. Water, warmth and glycerol all soften a film by raising x, so the same rule
 * holds for the dry film in any air and for the skin of a film that still dries.
 */
abstract class GlassDistanceRule extends FilmRule {
  private static final double PA_PER_MPA = 1e6;

  /**
   * A rule.
   *
   * @param property what it gives
   * @param factor between laboratories, one standard deviation
   * @param fromK lowest x of the films it was fitted to (K)
   * @param toK highest x of those films (K)
   * @param sources where it comes from
   */
  GlassDistanceRule(
      FilmProperty property, double factor, double fromK, double toK, List<Source> sources) {
    super(
        property,
        RuleScatter.factor(factor),
        List.of(
            FilmState.plasticiser(0, 60),
            new RuleLimit(
                new ValidRange("distance above the glass transition", fromK, toK, "K"),
                FilmState::aboveGlassK),
            FilmState.celsius(20, 27)),
        sources);
  }

  /**
   * The middle of what laboratories report.
   *
   * @param aboveGlassK x = T - Tg (K)
   * @param amyloseFraction amylose in the dry starch (mass fraction)
   * @return in the unit of the property
   */
  abstract double at(double aboveGlassK, double amyloseFraction);

  /** A step from 1 far below its middle to 0 far above. */
  static double glassy(double aboveGlassK, double middleK, double widthK) {
    return 1 / (1 + Math.exp((aboveGlassK - middleK) / widthK));
  }

  static double pa(double megapascals) {
    return PA_PER_MPA * megapascals;
  }

  @Override
  final double predict(FilmState film) {
    return at(film.aboveGlassK(), film.amyloseFraction());
  }
}
