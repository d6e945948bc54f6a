package starchfilm.files.roomlog;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.roomlog.LogDate.DateOrder;
import starchfilm.files.roomlog.LogTable.LogRow;

/** Decides for a whole room log whether its dates begin with the day or with the month. */
record LogDateOrder(Findings log) {
  private record DatedRow(int line, String text) {}

  DateOrder decide(List<LogRow> rows, LogColumns columns) throws UnreadableFileException {
    Map<DateOrder, DatedRow> first = new EnumMap<>(DateOrder.class);
    boolean offset = false;
    for (LogRow row : rows) {
      Optional<String> text = columns.moment(row.cells());
      Optional<LogDate> date = text.flatMap(LogDate::parse);
      if (date.isPresent()) {
        offset |= date.get().withOffset();
        if (date.get().order() != DateOrder.OPEN || date.get().isOpen()) {
          first.putIfAbsent(date.get().order(), new DatedRow(row.line(), text.orElseThrow()));
        }
      }
    }
    if (offset) {
      log.notice(
          "times carry an offset from UTC; they are read as the clock on the wall shows them");
    }
    DatedRow dayFirst = first.get(DateOrder.DAY_FIRST);
    DatedRow monthFirst = first.get(DateOrder.MONTH_FIRST);
    DatedRow open = first.get(DateOrder.OPEN);
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
      return DateOrder.MONTH_FIRST;
    }
    if (dayFirst == null && open != null) {
      throw new UnreadableFileException(
          Place.of(open.line()),
          '"' + open.text() + '"',
          "dates that say which number is the day",
          "no line of this log shows whether day or month comes first; write dates like 2026-04-02"
              + " or 2.4.2026");
    }
    return DateOrder.DAY_FIRST;
  }
}
