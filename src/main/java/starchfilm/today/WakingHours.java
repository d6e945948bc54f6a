package starchfilm.today;

import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * The hours in which somebody looks at plates: not the night, which is judged to be from 22:00 to
 * 7:00.
 */
public final class WakingHours {
  private static final LocalTime FIRST = LocalTime.of(7, 0);
  private static final LocalTime LAST = LocalTime.of(22, 0);

  /** The hours as they are told where they move a look. */
  public static final String WORDS = "not at night, 22:00 to 7:00";

  private WakingHours() {}

  /** A moment, or the next morning where it lies in the night. */
  public static LocalDateTime atOrAfter(LocalDateTime moment) {
    if (moment.toLocalTime().isBefore(FIRST)) {
      return moment.with(FIRST);
    }
    return moment.toLocalTime().isBefore(LAST) ? moment : moment.plusDays(1).with(FIRST);
  }

  /** A moment, or the evening before where it lies in the night. */
  public static LocalDateTime atOrBefore(LocalDateTime moment) {
    if (moment.toLocalTime().isBefore(FIRST)) {
      return moment.minusDays(1).with(LAST);
    }
    return moment.toLocalTime().isAfter(LAST) ? moment.with(LAST) : moment;
  }
}
