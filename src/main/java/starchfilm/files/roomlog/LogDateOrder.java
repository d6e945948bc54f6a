package starchfilm.files.roomlog;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;

/** Decides for a whole room log whether its dates begin with the day or with the month. */
final class LogDateOrder {
  private final Findings log;

  LogDateOrder(Findings log) {
    this.log = log;
  }

  private record Seen(int line, String text) {}

  LogDate.Order decide(List<LogTable.Row> rows, LogColumns columns) throws UnreadableFileException {
    Map<LogDate.Order, Seen> first = new EnumMap<>(LogDate.Order.class);
    boolean offset = false;
    for (LogTable.Row row : rows) {
      Optional<String> text = columns.moment(row.cells());
      Optional<LogDate> date = text.flatMap(LogDate::parse);
      if (date.isPresent()) {
        offset |= date.get().withOffset();
        if (date.get().order() != LogDate.Order.OPEN || date.get().isOpen()) {
          first.putIfAbsent(date.get().order(), new Seen(row.line(), text.orElseThrow()));
        }
      }
    }
    if (offset) {
      log.notice(
          "times carry an offset from UTC; they are read as the clock on the wall shows them");
    }
    Seen dayFirst = first.get(LogDate.Order.DAY_FIRST);
    Seen monthFirst = first.get(LogDate.Order.MONTH_FIRST);
    Seen open = first.get(LogDate.Order.OPEN);
    if (dayFirst != null && monthFirst != null) {
      throw new UnreadableFileException(
          Place.of(monthFirst.line()),
          "\"%s\" with the month first, \"%s\" in line %s with the day first"
              .formatted(monthFirst.text(), dayFirst.text(), dayFirst.line()),
          "one way of writing dates per file",
          "write all dates like 2026-04-02");
    }
    if (monthFirst != null) {
      log.notice(Place.of(monthFirst.line()), "dates are read with the month first");
      return LogDate.Order.MONTH_FIRST;
    }
    if (dayFirst == null && open != null) {
      throw new UnreadableFileException(
          Place.of(open.line()),
          '"' + open.text() + '"',
          "dates that say which number is the day",
          "no line of this log shows whether day or month comes first; write dates like 2026-04-02"
              + " or 2.4.2026");
    }
    return LogDate.Order.DAY_FIRST;
  }
}
