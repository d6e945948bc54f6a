package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;

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
import starchfilm.drying.Milestone;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.report.SideBySide.ComparedCell;
import starchfilm.report.SideBySide.ComparedRow;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;

/** The rows of the head table that say what is expected of the trials and what came of them. */
record ComparedRows(List<TrialForecast> trials) {
  private static final String NOTHING = "–";

  /** The expected figures: waiting times first, then the film. */
  List<ComparedRow> expected() {
    List<ComparedRow> rows = new ArrayList<>();
    Awaited.all().forEach(milestone -> rows.add(waiting(milestone)));
    rows.add(row("in the hand", trial -> ComparedCell.of(PlainWords.word(trial.film().feel()))));
    FilmFigure.MEASURED.forEach(property -> rows.add(film(property)));
    return rows;
  }

  /** The outcomes; only rows that some trial has something to say to. */
  List<ComparedRow> happened() {
    return told(said("seen", ComparedRows::faults), said("rating", ComparedRows::rating)).toList();
  }

  /** The rows that few ask for. */
  List<ComparedRow> further() {
    return Stream.concat(
            Arrays.stream(FilmFigure.values())
                .filter(property -> !FilmFigure.MEASURED.contains(property))
                .map(this::film),
            told(
                said("measured thickness", ComparedRows::thickness),
                said("weighings", ComparedRows::weighings)))
        .toList();
  }

  private static Stream<ComparedRow> told(ComparedRow... rows) {
    return Stream.of(rows)
        .filter(row -> row.cells().stream().anyMatch(cell -> !cell.text().equals(NOTHING)));
  }

  private ComparedRow row(String label, Function<TrialForecast, ComparedCell> cell) {
    return new ComparedRow(label, trials.stream().map(cell).toList());
  }

  private ComparedRow said(String label, Function<TrialForecast, String> words) {
    return row(
        label,
        trial ->
            ComparedCell.of(
                Optional.of(words.apply(trial)).filter(s -> !s.isEmpty()).orElse(NOTHING)));
  }

  /** Told by its length, which is what compares; a figure above has it on one scale. */
  private ComparedRow waiting(Milestone milestone) {
    double longestS =
        trials.stream()
            .mapToDouble(trial -> trial.drying().timeS(milestone).middle())
            .filter(Double::isFinite)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    return row(
        Awaited.label(milestone, ", "),
        trial -> {
          Band seconds = trial.drying().timeS(milestone);
          return new ComparedCell(
              Spans.of(seconds, longestS),
              PourCalendar.of(trial.trial()).moment(seconds.middle()),
              false,
              "",
              Optional.empty());
        });
  }

  private ComparedRow film(FilmFigure property) {
    return row(
        property.label() + ", " + property.unit().symbol(),
        trial ->
            ComparedCell.drawn(
                property.middle(trial.film(), ""),
                property.range(trial.film()),
                property.strip(trial, 0)));
  }

  private static String faults(TrialForecast forecast) {
    return forecast.seen().faults().stream()
        .map(fault -> PlainWords.seen(fault, PourCalendar.of(forecast.trial())))
        .collect(Collectors.joining("; "));
  }

  private static String rating(TrialForecast forecast) {
    OptionalInt rating = forecast.seen().rating();
    return rating.isPresent() ? rating.getAsInt() + " of 5" : "";
  }

  private static String thickness(TrialForecast forecast) {
    String all =
        forecast.seen().dryThicknessesM().stream()
            .map(metres -> Figures.noted(MICROMETRE.of(metres)))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? "" : all + " µm";
  }

  /** How often each verdict was given, in the order they were first given. */
  private static String weighings(TrialForecast forecast) {
    Map<String, Long> counts =
        Weighings.of(forecast).stream()
            .collect(
                Collectors.groupingBy(
                    Weighings.Weighed::verdict, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(verdict -> verdict.getValue() + " " + verdict.getKey())
        .collect(Collectors.joining(", "));
  }
}
