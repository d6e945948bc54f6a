package starchfilm.files.roomlog;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.findings.Findings;

/**
 * Reads the time column of a room log: dates, seconds since 1970, or a time since the pour.
 *
 * @param isMonthFirst whether the dates begin with the month where they begin with the day or it
 */
record LogClock(LogColumns columns, boolean isMonthFirst, LocalDateTime start, Findings log) {
  /** Where the pour is not known, a counted time begins here; only differences are used then. */
  static final LocalDateTime ANY_START = LocalDateTime.of(2000, 1, 1, 0, 0);

  /** From here on a number counts seconds since 1970: 9 September 2001. */
  private static final double SECONDS_FROM = 1e9;

  private static final double MILLISECONDS_FROM = 1e12;

  /** The moment a cell means; empty where it means none. */
  Optional<Instant> moment(String cell) {
    Optional<LogDate> date = LogDate.parse(cell);
    if (date.isPresent()) {
      return date.get().moment(isMonthFirst).map(WallClock::instant);
    }
    if (!cell.matches("[0-9]{1,14}(?:[.,][0-9]{1,9})?")) {
      return Optional.empty();
    }
    double number = Double.parseDouble(cell.replace(',', '.'));
    if (number >= SECONDS_FROM) {
      tell("times count seconds since 1970; they are read as the clock of Greenwich shows them");
      double seconds = number >= MILLISECONDS_FROM ? number / 1000 : number;
      return Optional.of(
          WallClock.instant(LocalDateTime.ofEpochSecond(Math.round(seconds), 0, ZoneOffset.UTC)));
    }
    OptionalDouble unit = columns.countedIn();
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    tell("times are counted from the pour");
    return Optional.of(
        WallClock.instant(start).plusSeconds(Math.round(number * unit.getAsDouble())));
  }

  /** Once of a log, whose times all count in one way. */
  private void tell(String sentence) {
    if (log.notices().stream().noneMatch(told -> told.text().equals(sentence))) {
      log.notice(sentence);
    }
  }
}
