package starchfilm.files.notebook;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Words;

/** Reads the moments of a trial file and counts them from the pour. */
record TimesReader(Optional<LocalDateTime> pouredAt) {
  /** Two years; nothing is noted about a film later than that. */
  private static final double MOST_S = 2 * 365.25 * 86_400;

  private static final int FIRST_YEAR = 1950;

  /** When it was poured: ISO date and time, or a date alone. */
  static Optional<LocalDateTime> pouredAt(ObjectReader trial) {
    Optional<LocalDateTime> time = clock(trial, "poured_at");
    if (time.isPresent() && MomentParser.isDateAlone(trial.text("poured_at").orElseThrow())) {
      trial.notRecorded("poured_at", "noon of that day", "clock times may be half a day off");
    }
    return time;
  }

  /** ISO date and time; a date alone stands for its noon. */
  static Optional<LocalDateTime> clock(ObjectReader section, String key) {
    Optional<String> text = section.text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<LocalDateTime> time = MomentParser.dated(text.get());
    if (time.isEmpty()) {
      section.fault(
          key,
          '"' + text.get() + '"',
          "date and time",
          "write date and time like \"2026-04-02T10:30\"");
    } else if (isFar(time.get())) {
      section.notice(key, time.get().toLocalDate() + " is far from today; is the year right?");
    }
    return time;
  }

  private static boolean isFar(LocalDateTime time) {
    return time.isAfter(LocalDateTime.now(ZoneId.systemDefault()).plusYears(1))
        || time.getYear() < FIRST_YEAR;
  }

  /**
   * A moment since the pour.
   *
   * @param what what happened then, such as "a weighing"
   * @return seconds, 0 or more; empty where there is none or it is at fault
   */
  OptionalDouble at(ObjectReader section, String what) {
    return at(section, "at", what);
  }

  /** A time in a field of another name. */
  OptionalDouble at(ObjectReader section, String field, String what) {
    Optional<String> text = section.text(field);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    Moment moment;
    try {
      moment = MomentParser.lasting(text.get());
    } catch (MistypedException e) {
      section.fault(field, e.given(), e.allowed(), e.mend());
      return OptionalDouble.empty();
    }
    OptionalDouble seconds = moment.secondsSince(pouredAt);
    if (seconds.isEmpty()) {
      section.fault(
          field,
          what + " by the clock in a trial without poured_at",
          "a time counted from the pour, such as \"+6h\"",
          "add poured_at, or count from the pour");
      return seconds;
    }
    double s = seconds.getAsDouble();
    if (s < 0 || s > MOST_S) {
      section.fault(
          field,
          what + " " + Words.span(Math.abs(s)) + (s < 0 ? " before the pour" : " after the pour"),
          s < 0 ? "the time of the pour or later" : "at most two years after it",
          "check this time and poured_at");
      return OptionalDouble.empty();
    }
    if (moment instanceof Moment.ByTheClock clock) {
      double putForwardS = WallClock.putForwardS(pouredAt.orElseThrow(), clock.time());
      if (putForwardS != 0) {
        section.notice(
            field,
            "the clocks were put %s between the pour and this; counted as %s after the pour"
                .formatted(putForwardS > 0 ? "forward" : "back", Words.span(s)));
      }
    }
    return seconds;
  }
}
