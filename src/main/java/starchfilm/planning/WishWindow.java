package starchfilm.planning;

import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import org.apache.commons.math3.distribution.NormalDistribution;
import starchfilm.film.Feel;
import starchfilm.film.FilmForecast;
import starchfilm.numerics.evidence.Band;

/**
 * The plasticiser levels that make the film asked for, in the air it is used in.
 *
 * @param from lower end (kg glycerol per kg dry starch)
 * @param to upper end; below {@code from} where no level does
 * @param glassTransitionFromK glass transition at the lower end (K); positive infinity where less
 *     glycerol cannot spoil the wish
 * @param glassTransitionToK glass transition at the upper end (K); negative infinity where more
 *     cannot spoil it
 */
record WishWindow(double from, double to, double glassTransitionFromK, double glassTransitionToK) {
  /** Most glycerol that is looked at: the film rules end at 0.6 kg per kg dry starch. */
  static final double MOST_PLASTICISER = 0.6;

  private static final double STEP = 0.01;
  private static final int HALVINGS = 10;

  /** Thickness and vinegar move neither feel nor stretch; strength is looked at without acid. */
  private static final double ANY_THICKNESS_M = 2e-3;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /**
   * The window of a wish in one starch. Figures without a feel are met by film that is neither
   * brittle nor sticky, unless only such film meets them.
   */
  static WishWindow of(PlanRequest request, StarchBlend blend) {
    Wish wish = request.wish();
    WishWindow sound = of(forecast -> meets(wish, forecast) && isSound(forecast), blend, request);
    return sound.isEmpty() ? of(forecast -> meets(wish, forecast), blend, request) : sound;
  }

  private static boolean isSound(FilmForecast film) {
    return film.feel() != Feel.BRITTLE && film.feel() != Feel.STICKY;
  }

  private static WishWindow of(
      Predicate<FilmForecast> wish, StarchBlend blend, PlanRequest request) {
    DoublePredicate met = plasticiser -> wish.test(at(plasticiser, blend, request));
    int steps = (int) Math.round(MOST_PLASTICISER / STEP);
    int start = 0;
    int longest = 0;
    int length = 0;
    for (int i = 0; i <= steps; i++) {
      length = met.test(i * STEP) ? length + 1 : 0;
      if (length > longest) {
        longest = length;
        start = i - length + 1;
      }
    }
    if (longest == 0) {
      return new WishWindow(1, 0, Double.NaN, Double.NaN);
    }
    int end = start + longest - 1;
    double from = start == 0 ? 0 : edge(start - 1, start, met);
    double to = end == steps ? MOST_PLASTICISER : edge(end + 1, end, met);
    return new WishWindow(
        from,
        to,
        start == 0
            ? Double.POSITIVE_INFINITY
            : at(from, blend, request).glassTransitionK().middle(),
        end == steps
            ? Double.NEGATIVE_INFINITY
            : at(to, blend, request).glassTransitionK().middle());
  }

  /** Where the wish begins to be met, between a step outside and a step inside. */
  private static double edge(int outside, int inside, DoublePredicate met) {
    double out = outside * STEP;
    double in = inside * STEP;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (out + in) / 2;
      if (met.test(middle)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  static FilmForecast at(double plasticiser, StarchBlend blend, PlanRequest request) {
    double starch = (blend.castFrom() + blend.castTo()) / 2;
    return request.film(new Design(blend, starch, plasticiser, 0, ANY_THICKNESS_M, 1));
  }

  static boolean meets(Wish wish, FilmForecast film) {
    return (wish.feel().isEmpty() || film.feel() == wish.feel().get())
        && (wish.strengthPa().isEmpty()
            || film.tensileStrengthPa().middle() >= wish.strengthPa().getAsDouble())
        && (wish.elongation().isEmpty()
            || film.elongationAtBreak().middle() >= wish.elongation().getAsDouble());
  }

  boolean isEmpty() {
    return from > to;
  }

  /** The level furthest from both ends. */
  double centre() {
    return (from + to) / 2;
  }

  /** The window without its outer parts, so that a spoon's rounding does not leave it. */
  WishWindow narrowed(double share) {
    double margin = share * (to - from);
    return new WishWindow(
        from == 0 ? 0 : from + margin, to - margin, glassTransitionFromK, glassTransitionToK);
  }

  /**
   * How likely a film is as asked, by the band of its glass transition alone.
   *
   * @return 0 to 1
   */
  double chance(Band glassTransitionK) {
    double sd = glassTransitionK.estimate().sd();
    double middle = glassTransitionK.middle();
    return NORMAL.cumulativeProbability((glassTransitionFromK - middle) / sd)
        - NORMAL.cumulativeProbability((glassTransitionToK - middle) / sd);
  }
}
