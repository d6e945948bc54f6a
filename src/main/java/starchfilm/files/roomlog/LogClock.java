package starchfilm.files.roomlog;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.findings.Findings;
import starchfilm.files.roomlog.LogTable.LogRow;

/**
 * Reads the time column of a room log: dates, seconds since 1970, or a time since the pour.
 *
 * @param isMonthFirst whether the dates begin with the month where they begin with the day or it
 * @param ahead how far the clock on the wall is ahead of the offset from UTC that the log says
 */
record LogClock(
    LogColumns columns, boolean isMonthFirst, LocalDateTime start, Findings log, Duration ahead) {
  /** Where the pour is not known, a counted time begins here; only differences are used then. */
  static final LocalDateTime ANY_START = LocalDateTime.of(2000, 1, 1, 0, 0);

  /** From here on a number counts seconds since 1970: 9 September 2001. */
  private static final double SECONDS_FROM = 1e9;

  private static final double MILLISECONDS_FROM = 1e12;

  /**
   * When a row was written.
   *
   * @param isByTheWall whether a clock on the wall showed it, which may have been put forward since
   * @param offset from UTC, where the row says it
   */
  record LogMoment(Instant time, boolean isByTheWall, Optional<ZoneOffset> offset) {}

  /**
   * The clock of a log.
   *
   * <p>Times with an offset from UTC and seconds since 1970 pass evenly, whatever the clock on the
   * wall does. What they show is taken as the clock on the wall at the pour; where the first has
   * the offset of this machine's zone, they are true as they stand.
   *
   * @param rows its rows
   */
  static LogClock of(
      List<LogRow> rows,
      LogColumns columns,
      boolean isMonthFirst,
      LocalDateTime start,
      Findings log) {
    LogClock exact = new LogClock(columns, isMonthFirst, start, log, Duration.ZERO);
    return rows.stream()
        .flatMap(row -> columns.moment(row.cells()).stream())
        .flatMap(cell -> exact.moment(cell).stream())
        .findFirst()
        .map(first -> new LogClock(columns, isMonthFirst, start, log, ahead(first, start)))
        .orElse(exact);
  }

  private static Duration ahead(LogMoment first, LocalDateTime start) {
    return first
        .offset()
        .filter(
            offset ->
                !WallClock.at(first.time()).equals(LocalDateTime.ofInstant(first.time(), offset)))
        .map(offset -> Duration.between(start.toInstant(offset), WallClock.instant(start)))
        .orElse(Duration.ZERO);
  }

  /** The moment a cell means; empty where it means none. */
  Optional<LogMoment> moment(String cell) {
    Optional<LogDate> date = LogDate.parse(cell);
    if (date.isPresent()) {
      return date.get().moment(isMonthFirst).map(shown -> moment(shown, date.get().offset()));
    }
    if (!cell.matches("[0-9]{1,14}(?:[.,][0-9]{1,9})?")) {
      return Optional.empty();
    }
    double number = Double.parseDouble(cell.replace(',', '.'));
    if (number >= SECONDS_FROM) {
      tell("times count seconds since 1970; they are read as the clock of Greenwich shows them");
      double seconds = number >= MILLISECONDS_FROM ? number / 1000 : number;
      LocalDateTime shown = LocalDateTime.ofEpochSecond(Math.round(seconds), 0, ZoneOffset.UTC);
      return Optional.of(moment(shown, Optional.of(ZoneOffset.UTC)));
    }
    OptionalDouble unit = columns.countedIn();
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    tell("times are counted from the pour");
    long counted = Math.round(number * unit.getAsDouble());
    Instant time = WallClock.instant(start).plusSeconds(counted);
    return Optional.of(new LogMoment(time, false, Optional.empty()));
  }

  private LogMoment moment(LocalDateTime shown, Optional<ZoneOffset> offset) {
    return offset
        .map(said -> new LogMoment(shown.toInstant(said).plus(ahead), false, offset))
        .orElseGet(() -> new LogMoment(WallClock.instant(shown), true, offset));
  }

  /** Once of a log, whose times all count in one way. */
  private void tell(String sentence) {
    if (log.notices().stream().noneMatch(told -> told.text().equals(sentence))) {
      log.notice(sentence);
    }
  }
}
