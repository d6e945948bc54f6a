package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.SideBySide.Cell;
import starchfilm.report.SideBySide.Changed;
import starchfilm.report.SideBySide.Row;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/** The rows of the head table that say what is expected. */
final class ForecastRows {
  private ForecastRows() {}

  /**
   * The rows.
   *
   * @param trials the trials on the page
   * @return waiting times first, then the film
   */
  static List<Row> of(List<TrialForecast> trials) {
    DryingScale drying = DryingScale.of(trials);
    List<Row> rows = new ArrayList<>();
    rows.add(waiting("peelable", "peelable", drying, trials, DryingScale::peelable));
    rows.add(waiting("dry through, thick spot", "dry", drying, trials, DryingScale::dryThrough));
    rows.add(
        new Row(
            "in the hand",
            trials.stream()
                .map(
                    trial ->
                        new Cell(
                            PlainWords.word(trial.film().feel()),
                            "",
                            Changed.SAME,
                            CellFigure.none()))
                .toList()));
    for (FilmFigure property : FilmFigure.values()) {
      rows.add(film(property, trials));
    }
    return rows;
  }

  private static Row waiting(
      String label,
      String kind,
      DryingScale scale,
      List<TrialForecast> trials,
      Function<TrialForecast, Band> moment) {
    List<Cell> cells = new ArrayList<>();
    for (TrialForecast trial : trials) {
      Band seconds = moment.apply(trial);
      PourCalendar calendar = new PourCalendar(trial.trial().pouredAt());
      cells.add(
          new Cell(
              calendar.moment(seconds.middle()),
              Spans.of(seconds),
              Changed.SAME,
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
              Changed.SAME,
              CellFigure.strip(property.strip(trial, 0))));
    }
    return new Row(property.label() + ", " + property.unit().symbol(), cells);
  }
}
