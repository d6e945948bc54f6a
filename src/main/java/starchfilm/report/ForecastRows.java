package starchfilm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.SideBySide.Cell;
import starchfilm.report.SideBySide.Row;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/** The rows of the head table that say what is expected. */
final class ForecastRows {
  private ForecastRows() {}

  private static final List<FilmFigure> TOLD_FIRST =
      List.of(FilmFigure.THICKNESS, FilmFigure.STRENGTH, FilmFigure.ELONGATION);

  /**
   * The rows.
   *
   * @return waiting times first, then the film
   */
  static List<Row> of(List<TrialForecast> trials) {
    DryingScale drying = DryingScale.of(trials);
    List<Row> rows = new ArrayList<>();
    rows.add(waiting("peelable", "peelable", drying, trials, trial -> trial.drying().peelableS()));
    rows.add(
        waiting(
            "dry through, thick spot",
            "dry",
            drying,
            trials,
            trial -> trial.drying().dryThroughS()));
    rows.add(
        new Row(
            "in the hand",
            trials.stream()
                .map(
                    trial ->
                        new Cell(
                            PlainWords.word(trial.film().feel()), "", false, CellFigure.none()))
                .toList()));
    for (FilmFigure property : TOLD_FIRST) {
      rows.add(film(property, trials));
    }
    return rows;
  }

  /** The rows that few ask for. */
  static List<Row> further(List<TrialForecast> trials) {
    return Arrays.stream(FilmFigure.values())
        .filter(property -> !TOLD_FIRST.contains(property))
        .map(property -> film(property, trials))
        .toList();
  }

  private static Row waiting(
      String label,
      String kind,
      DryingScale scale,
      List<TrialForecast> trials,
      Function<TrialForecast, Band> moment) {
    double longestS =
        trials.stream()
            .mapToDouble(trial -> moment.apply(trial).middle())
            .filter(Double::isFinite)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    List<Cell> cells = new ArrayList<>();
    for (TrialForecast trial : trials) {
      Band seconds = moment.apply(trial);
      PourCalendar calendar = new PourCalendar(trial.trial().pouredAt());
      cells.add(
          new Cell(
              calendar.moment(seconds.middle()),
              Spans.of(seconds, longestS),
              false,
              CellFigure.strip(scale.strip(kind, seconds))));
    }
    return new Row(label, cells);
  }

  private static Row film(FilmFigure property, List<TrialForecast> trials) {
    List<Cell> cells = new ArrayList<>();
    for (TrialForecast trial : trials) {
      cells.add(
          new Cell(
              property.middle(trial.film(), ""),
              property.range(trial.film()),
              false,
              CellFigure.strip(property.strip(trial, 0))));
    }
    return new Row(property.label() + ", " + property.unit().symbol(), cells);
  }
}
