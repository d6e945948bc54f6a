package starchfilm.files.roomlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.roomlog.LogTable.LogRow;

/** Decides for a whole room log whether its dates begin with the day or with the month. */
record LogDateOrder(Findings log) {
  private record DatedRow(int line, String text, LogDate date) {}

  /** Whether the month comes first. */
  boolean isMonthFirst(List<LogRow> rows, LogColumns columns) throws UnreadableFileException {
    List<DatedRow> dated = new ArrayList<>();
    for (LogRow row : rows) {
      columns
          .moment(row.cells())
          .ifPresent(
              text ->
                  LogDate.parse(text)
                      .ifPresent(date -> dated.add(new DatedRow(row.line(), text, date))));
    }
    if (dated.stream().anyMatch(row -> row.date().offset().isPresent())) {
      log.notice(
          "times carry an offset from UTC; they are read as the clock on the wall shows them");
    }
    List<DatedRow> telling =
        dated.stream()
            .filter(row -> !row.date().dayFirst().equals(row.date().monthFirst()))
            .toList();
    Optional<DatedRow> dayFirst =
        telling.stream().filter(row -> row.date().monthFirst().isEmpty()).findFirst();
    Optional<DatedRow> monthFirst =
        telling.stream().filter(row -> row.date().dayFirst().isEmpty()).findFirst();
    if (dayFirst.isPresent() && monthFirst.isPresent()) {
      throw new UnreadableFileException(
          Place.of(monthFirst.get().line()),
          "\"%s\" with the month first, \"%s\" in line %s with the day first"
              .formatted(monthFirst.get().text(), dayFirst.get().text(), dayFirst.get().line()),
          "one way of writing dates per file",
          "write all dates like 2026-04-02");
    }
    if (monthFirst.isPresent()) {
      log.notice(Place.of(monthFirst.get().line()), "dates are read with the month first");
      return true;
    }
    if (dayFirst.isEmpty() && !telling.isEmpty()) {
      throw new UnreadableFileException(
          Place.of(telling.get(0).line()),
          '"' + telling.get(0).text() + '"',
          "dates that say which number is the day",
          "no line of this log shows whether day or month comes first; write dates like 2026-04-02"
              + " or 2.4.2026");
    }
    return false;
  }
}
