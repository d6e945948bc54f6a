package starchfilm.numerics.figures;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;
import static starchfilm.numerics.units.Units.MINUTE_S;

import starchfilm.numerics.evidence.Band;

/** Lengths of time as text. */
public final class Spans {

  /** Up to here hours are the better unit (s). */
  private static final double HOURS_UP_TO_S = 2 * DAY_S;

  private Spans() {}

  /** The unit in which a length of time is stated. */
  private enum SpanUnit {
    MINUTES("minutes", "minute", MINUTE_S),
    HOURS("hours", "hour", HOUR_S),
    DAYS("days", "day", DAY_S);

    private final String many;
    private final String one;
    private final double seconds;

    SpanUnit(String many, String one, double seconds) {
      this.many = many;
      this.one = one;
      this.seconds = seconds;
    }

    static SpanUnit fitting(double seconds) {
      if (seconds < 2 * HOUR_S) {
        return MINUTES;
      }
      return seconds < HOURS_UP_TO_S ? HOURS : DAYS;
    }

    String name(String figure) {
      return figure.equals("1") ? one : many;
    }
  }

  /**
   * A forecast length of time with its range.
   *
   * @param seconds the band (s); infinity where it never comes
   * @return such as {@code 31 hours (24–40)}, {@code 6.2 days (5.0 to never)}; {@code never}
   */
  public static String of(Band seconds) {
    return of(seconds, finite(seconds));
  }

  /**
   * The same beside others: all of them in the unit of the longest.
   *
   * @param seconds the band (s); infinity where it never comes
   * @param longestS the longest middle of those beside one another (s)
   * @return such as {@code 1.3 days (1.0–1.7)}; without a range where its ends read the same
   */
  public static String of(Band seconds, double longestS) {
    if (Double.isInfinite(seconds.low())) {
      return "never";
    }
    SpanUnit unit = SpanUnit.fitting(Double.isInfinite(longestS) ? finite(seconds) : longestS);
    String middle = Figures.two(seconds.middle() / unit.seconds);
    String low = Figures.two(seconds.low() / unit.seconds);
    String high = Figures.two(seconds.high() / unit.seconds);
    return middle
        + (Double.isInfinite(seconds.middle()) ? "" : " " + unit.name(middle))
        + Figures.around(low, high);
  }

  /**
   * A length of time.
   *
   * @param seconds 0 or more (s); infinity for never
   * @return such as {@code 31 hours}
   */
  public static String of(double seconds) {
    if (Double.isInfinite(seconds)) {
      return "never";
    }
    return of(seconds, seconds);
  }

  /**
   * The same beside a longer one, in its unit.
   *
   * @param seconds 0 or more (s)
   * @param longestS the longer one (s)
   * @return such as {@code 1.7 days}
   */
  public static String of(double seconds, double longestS) {
    SpanUnit unit = SpanUnit.fitting(longestS);
    String figure = Figures.two(seconds / unit.seconds);
    return figure + " " + unit.name(figure);
  }

  /**
   * A length of time that somebody gave, whose whole hours or days are no doubt's.
   *
   * @param seconds 0 or more (s)
   * @return such as {@code 365 days}, where a forecast would say {@code 370 days}
   */
  public static String given(double seconds) {
    SpanUnit unit = SpanUnit.fitting(seconds);
    double figure = seconds / unit.seconds;
    return figure < 100 ? of(seconds) : Figures.whole(figure) + " " + unit.many;
  }

  /**
   * A range for a sentence, in whole hours or days.
   *
   * @param seconds the band (s), its low end finite
   * @return such as {@code 3–5 days}, {@code about 3 days}, {@code at most 2 days} or {@code 6 days
   *     or more}
   */
  public static String rough(Band seconds) {
    SpanUnit unit = SpanUnit.fitting(finite(seconds));
    String low = Figures.whole(seconds.low() / unit.seconds);
    if (Double.isInfinite(seconds.high())) {
      return low + " " + unit.name(low) + " or more";
    }
    String high = Figures.whole(seconds.high() / unit.seconds);
    if (low.equals("0")) {
      return "at most " + high + " " + unit.name(high);
    }
    return low.equals(high)
        ? "about " + low + " " + unit.name(low)
        : low + "–" + high + " " + unit.many;
  }

  private static double finite(Band seconds) {
    return Double.isInfinite(seconds.middle()) ? seconds.low() : seconds.middle();
  }
}
