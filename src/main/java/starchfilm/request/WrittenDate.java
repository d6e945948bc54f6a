package starchfilm.request;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.saving.NoteWords;

/** By when a film must be ready, against the clock on the wall: the pour is now. */
final class WrittenDate {
  private static final String ALLOWED =
      "a time from now, such as 5d or 36h, or a day to come, such as friday, sat noon, 28 Nov 18:00"
          + " or 2026-12-01";
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("EEE d MMM, H:mm", Locale.ENGLISH);
  private static final DateTimeFormatter SHOWN_WITH_YEAR =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy, H:mm", Locale.ENGLISH);

  /** A file notes nothing of a film that is older, either. */
  private static final int MOST_YEARS = 2;

  private WrittenDate() {}

  /** A day without an hour stands for its noon, as in a file. */
  static LocalDateTime poured(String typed, EntryReader in, Clock clock) {
    MomentParser moments = new MomentParser(clock);
    Optional<LocalDateTime> noon = moments.noonOf(typed);
    if (noon.isPresent()) {
      in.remark("The hour of the pour is not given; noon is assumed.");
    }
    LocalDateTime at = noon.orElseGet(() -> NoteWords.pour(moments, typed)).withSecond(0);
    moments.refuseFuture(new Moment.ByTheClock(at), Optional.empty(), typed);
    if (noon.isEmpty() && !typed.matches(".*(?:[0-9]|now).*")) {
      in.remark("Poured " + shown(at, LocalDateTime.now(clock)) + ".");
    }
    return at;
  }

  /** The time to a date (s), which is said back. */
  static double secondsFromNow(EntryReader in, String typed, Clock clock) {
    // One now for both: with a second one, a deadline of 12:00 was said to be 11:59.
    Clock stopped = Clock.fixed(clock.instant(), clock.getZone());
    LocalDateTime now = LocalDateTime.now(stopped);
    LocalDateTime by = coming(typed, stopped);
    in.remark("By %s, poured now, %s.".formatted(shown(by, now), shown(now, now)));
    return WallClock.secondsBetween(now, by);
  }

  /** The date to which it is so long from now (s), such as {@code Tue 1 Dec, 20:17}. */
  static String shown(double fromNowS, Clock clock) {
    LocalDateTime now = LocalDateTime.now(clock);
    return shown(WallClock.after(now, fromNowS), now);
  }

  private static String shown(LocalDateTime time, LocalDateTime now) {
    return (time.getYear() == now.getYear() ? SHOWN : SHOWN_WITH_YEAR).format(time);
  }

  /** The time from a pour that was so long ago (s) to the date (s): spans count from the pour. */
  static double secondsFrom(LocalDateTime pour, double agoS, String typed, Clock clock) {
    return MomentParser.isSpan(typed)
        ? secondsFromNow(
            typed, Clock.fixed(pour.atZone(clock.getZone()).toInstant(), clock.getZone()))
        : agoS + secondsFromNow(typed, clock);
  }

  /**
   * The time from now to the date; a day without an hour counts to its noon.
   *
   * @param typed as typed
   * @return s, above 0
   */
  static double secondsFromNow(String typed, Clock clock) {
    // One now for both, or 0 d is a moment to come.
    Clock stopped = Clock.fixed(clock.instant(), clock.getZone());
    return WallClock.secondsBetween(LocalDateTime.now(stopped), coming(typed, stopped));
  }

  private static LocalDateTime coming(String typed, Clock stopped) {
    LocalDateTime now = LocalDateTime.now(stopped);
    LocalDateTime at =
        new MomentParser(stopped)
            .coming(typed)
            .orElseThrow(() -> new MistypedException(typed, ALLOWED, "write it like one of these"));
    if (at.isAfter(now.plusYears(MOST_YEARS))) {
      throw new MistypedException(
          typed, "a moment within two years", "check the date; no film dries that long");
    }
    if (!(WallClock.secondsBetween(now, at) > 0)) {
      throw new MistypedException(
          typed,
          "a moment after now, " + shown(now, now),
          "it is past; write a time from now, such as 5d, or a later day");
    }
    return at;
  }
}
