package starchfilm.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.SideBySide.Cell;
import starchfilm.report.SideBySide.Row;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.ReaderUnit;

/** The rows of the head table that say what came of the trials. */
final class HappenedRows {
  private static final String NOTHING = "–";

  private HappenedRows() {}

  /**
   * The rows.
   *
   * @return only rows that some trial has something to say to
   */
  static List<Row> of(List<TrialForecast> trials) {
    return List.of(
            row("seen", trials, HappenedRows::faults), row("rating", trials, HappenedRows::rating))
        .stream()
        .filter(row -> row.cells().stream().anyMatch(cell -> !cell.text().equals(NOTHING)))
        .toList();
  }

  /**
   * Rows of what was measured, for those who ask.
   *
   * @return only rows that some trial has something to say to
   */
  static List<Row> further(List<TrialForecast> trials) {
    return List.of(
            row("measured thickness", trials, HappenedRows::thickness),
            row("weighings", trials, HappenedRows::weighings))
        .stream()
        .filter(row -> row.cells().stream().anyMatch(cell -> !cell.text().equals(NOTHING)))
        .toList();
  }

  private static Row row(
      String label, List<TrialForecast> trials, Function<TrialForecast, String> value) {
    return new Row(
        label,
        trials.stream()
            .map(value)
            .map(text -> new Cell(text, "", false, CellFigure.none()))
            .toList());
  }

  private static String faults(TrialForecast forecast) {
    Trial trial = forecast.trial();
    if (trial.seen().faults().isEmpty()) {
      return NOTHING;
    }
    return trial.seen().faults().stream()
        .map(fault -> PlainWords.sentence(fault, new PourCalendar(trial.pouredAt())))
        .collect(Collectors.joining("; "));
  }

  private static String rating(TrialForecast forecast) {
    OptionalInt rating = forecast.trial().seen().rating();
    return rating.isPresent() ? rating.getAsInt() + " of 5" : NOTHING;
  }

  private static String thickness(TrialForecast forecast) {
    Trial trial = forecast.trial();
    if (trial.seen().dryThicknessesM().isEmpty()) {
      return NOTHING;
    }
    return trial.seen().dryThicknessesM().stream()
            .map(metres -> Figures.noted(ReaderUnit.MICROMETRE.of(metres)))
            .collect(Collectors.joining(", "))
        + " µm";
  }

  /** How often each verdict was given, in the order they were first given. */
  private static String weighings(TrialForecast forecast) {
    if (forecast.trial().seen().weighings().isEmpty()) {
      return NOTHING;
    }
    Map<String, Long> counts =
        Happened.of(forecast).weighings().stream()
            .collect(
                Collectors.groupingBy(
                    Happened.Weighed::verdict, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(verdict -> verdict.getValue() + " " + verdict.getKey())
        .collect(Collectors.joining(", "));
  }
}
