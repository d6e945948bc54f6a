package starchfilm.casting.trial;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;

/**
 * The clock on the wall, which this machine's zone puts forward and back: between two times it
 * shows, the hours count that pass, also one that the clock skips or shows twice.
 */
public final class WallClock {
  private WallClock() {}

  /**
   * The moment at which it shows a time: the first of two; a time in an hour that it skips counts
   * as one hour later.
   */
  public static Instant instant(LocalDateTime shown) {
    return shown.atZone(ZoneId.systemDefault()).toInstant();
  }

  /** The time that it shows at a moment. */
  public static LocalDateTime at(Instant moment) {
    return LocalDateTime.ofInstant(moment, ZoneId.systemDefault());
  }

  /**
   * What it shows some time later.
   *
   * @param start a time that it shows
   * @param s seconds that pass; rounded to whole ones
   * @return the time that it shows then
   */
  public static LocalDateTime after(LocalDateTime start, double s) {
    return at(instant(start).plusSeconds(Math.round(s)));
  }

  /**
   * The time that passes from one time it shows to another.
   *
   * @return s; negative where the other is earlier
   */
  public static double secondsBetween(LocalDateTime from, LocalDateTime to) {
    return seconds(Duration.between(instant(from), instant(to)));
  }

  /**
   * By how much it was put forward between two times it shows.
   *
   * @return s; negative where it was put back, 0 where it was left alone
   */
  public static double putForwardS(LocalDateTime from, LocalDateTime to) {
    return seconds(Duration.between(from, to)) - secondsBetween(from, to);
  }

  /** Also of spans whose milliseconds no long holds. */
  private static double seconds(Duration span) {
    return span.toSeconds() + span.toNanosPart() / 1e9;
  }
}
