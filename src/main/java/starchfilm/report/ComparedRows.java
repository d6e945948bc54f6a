package starchfilm.report;

import static starchfilm.report.words.ReaderUnit.MICROMETRE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.drying.DryingForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.SideBySide.Cell;
import starchfilm.report.SideBySide.Row;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/** The rows of the head table that say what is expected of the trials and what came of them. */
final class ComparedRows {
  private static final String NOTHING = "–";

  private static final List<FilmFigure> TOLD_FIRST =
      List.of(FilmFigure.THICKNESS, FilmFigure.STRENGTH, FilmFigure.ELONGATION);

  private ComparedRows() {}

  /** What is expected: waiting times first, then the film. */
  static List<Row> expected(List<TrialForecast> trials) {
    DryingScale scale = DryingScale.of(trials);
    List<Row> rows = new ArrayList<>();
    rows.add(waiting("peelable", "peelable", scale, trials, DryingForecast::peelableS));
    rows.add(waiting("dry through, thick spot", "dry", scale, trials, DryingForecast::dryThroughS));
    rows.add(row("in the hand", trials, trial -> PlainWords.word(trial.film().feel())));
    TOLD_FIRST.forEach(property -> rows.add(film(property, trials)));
    return rows;
  }

  /** What came of them; only rows that some trial has something to say to. */
  static List<Row> happened(List<TrialForecast> trials) {
    return told(
            row("seen", trials, ComparedRows::faults), row("rating", trials, ComparedRows::rating))
        .toList();
  }

  /** The rows that few ask for. */
  static List<Row> further(List<TrialForecast> trials) {
    return Stream.concat(
            Arrays.stream(FilmFigure.values())
                .filter(property -> !TOLD_FIRST.contains(property))
                .map(property -> film(property, trials)),
            told(
                row("measured thickness", trials, ComparedRows::thickness),
                row("weighings", trials, ComparedRows::weighings)))
        .toList();
  }

  private static Stream<Row> told(Row... rows) {
    return Stream.of(rows)
        .filter(row -> row.cells().stream().anyMatch(cell -> !cell.text().equals(NOTHING)));
  }

  private static Row row(
      String label, List<TrialForecast> trials, Function<TrialForecast, String> value) {
    return new Row(label, trials.stream().map(value).map(Cell::of).toList());
  }

  private static Row waiting(
      String label,
      String kind,
      DryingScale scale,
      List<TrialForecast> trials,
      Function<DryingForecast, Band> moment) {
    double longestS =
        trials.stream()
            .mapToDouble(trial -> moment.apply(trial.drying()).middle())
            .filter(Double::isFinite)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    List<Cell> cells = new ArrayList<>();
    for (TrialForecast trial : trials) {
      Band seconds = moment.apply(trial.drying());
      cells.add(
          new Cell(
              PourCalendar.of(trial.trial()).moment(seconds.middle()),
              Spans.of(seconds, longestS),
              false,
              "",
              Optional.of(scale.strip(kind, seconds))));
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
              "",
              Optional.of(property.strip(trial, 0))));
    }
    return new Row(property.label() + ", " + property.unit().symbol(), cells);
  }

  private static String faults(TrialForecast forecast) {
    PourCalendar calendar = PourCalendar.of(forecast.trial());
    return orNothing(
        forecast.seen().faults().stream()
            .map(fault -> PlainWords.seen(fault, calendar))
            .collect(Collectors.joining("; ")));
  }

  private static String rating(TrialForecast forecast) {
    OptionalInt rating = forecast.seen().rating();
    return rating.isPresent() ? rating.getAsInt() + " of 5" : NOTHING;
  }

  private static String thickness(TrialForecast forecast) {
    String all =
        forecast.seen().dryThicknessesM().stream()
            .map(metres -> Figures.noted(MICROMETRE.of(metres)))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? NOTHING : all + " µm";
  }

  /** How often each verdict was given, in the order they were first given. */
  private static String weighings(TrialForecast forecast) {
    Map<String, Long> counts =
        Happened.of(forecast).weighings().stream()
            .collect(
                Collectors.groupingBy(
                    Happened.Weighed::verdict, LinkedHashMap::new, Collectors.counting()));
    return orNothing(
        counts.entrySet().stream()
            .map(verdict -> verdict.getValue() + " " + verdict.getKey())
            .collect(Collectors.joining(", ")));
  }

  private static String orNothing(String words) {
    return words.isEmpty() ? NOTHING : words;
  }
}
