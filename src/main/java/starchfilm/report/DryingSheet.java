package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.MilestoneTable.MilestoneLine;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.Sheet;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;

/**
 * The drying forecast of one plate.
 *
 * @param analysis the trial
 * @param learnt what its forecast rests on beside its own recipe, room and weighings
 * @param assumptions what was taken for granted of what was typed, a sentence each
 * @param width characters of the terminal, 40 or more: table and curve fit into it
 */
public record DryingSheet(
    TrialAnalysis analysis, List<String> learnt, List<String> assumptions, int width)
    implements Sheet {
  private static final String FIRST_COLUMN = "%-11s ";
  private static final String COLUMN = "%-22s ";
  private static final int TABLE_WIDTH = 78;

  @Override
  public String json() {
    return DryingFile.json(analysis.forecast(), assumed());
  }

  @Override
  public String csv() {
    return DryingFile.csv(analysis.forecast(), assumed());
  }

  private List<String> assumed() {
    return Stream.concat(learnt.stream(), assumptions.stream()).toList();
  }

  @Override
  public List<String> lines() {
    TrialForecast forecast = analysis.forecast();
    Trial trial = forecast.trial();
    PourFigure pour = PourFigure.of(forecast, PourFigure.tallestM(List.of(forecast)));
    MilestoneTable milestones = MilestoneTable.of(forecast);
    List<String> lines = new ArrayList<>();
    OddityWords.of(trial).forEach(sentence -> lines.add("Odd: " + sentence));
    lines.add(trial.name() + " (" + PourCalendar.of(trial).pour() + ")");
    lines.add(Headline.of(forecast));
    trial.wanted().byS().ifPresent(byS -> lines.add(Headline.inTime(forecast, byS)));
    lines.addAll(Headline.hints(forecast));
    forecast.weighed().questions().forEach(question -> lines.add(question.withCommand(trial)));
    lines.add("");
    lines.add(RoomWords.place(trial.casting().place()));
    lines.add(
        "%s on %s; %s."
            .formatted(
                pour.wetLabel(), RecipeWords.plate(trial.casting().plate()), pour.dryLabel()));
    if (!trial.casting().faces().isEmpty()) {
      lines.add(PlainWords.capital(RecipeWords.faces(trial.casting().faces())) + ".");
    }
    lines.add("");
    lines.addAll(table(milestones));
    lines.add("");
    milestones.rows().forEach(row -> lines.add(row.name() + ": " + row.meaning() + "."));
    milestones.scaleTest().ifPresent(lines::add);
    lines.add("");
    lines.addAll(CurvePlot.of(forecast, width));
    lines.add("");
    RiskTable.of(analysis)
        .forEach(
            risk ->
                lines.add(
                    "%s: %s. %s %s"
                        .formatted(risk.name(), risk.level(), risk.reason(), risk.remedy())
                        .strip()));
    trial
        .seen()
        .faults()
        .forEach(
            fault ->
                lines.add(
                    "Noted: %s. %s"
                        .formatted(
                            PlainWords.seen(fault, PourCalendar.of(trial)),
                            FailedFilm.todo(fault, forecast))));
    TrialView.drivers(forecast).stream()
        .limit(1)
        .forEach(
            driver ->
                lines.add(
                    "Most of the range (%s %%) comes from %s. %s"
                        .formatted(
                            PERCENT.whole(driver.share()),
                            PlainWords.word(driver.factor()),
                            PlainWords.word(driver.factor(), "to know it better"))));
    if (!trial.notRecorded().isEmpty()) {
      lines.add(
          trial.notRecorded().stream()
              .map(NotRecorded::words)
              .collect(Collectors.joining("; ", "Not recorded, so assumed: ", ".")));
    }
    PlainWords.extrapolations(forecast.drying().extrapolations())
        .forEach(sentence -> lines.add("Beyond the range of a rule: " + sentence));
    if (forecast.drying().logEndsEarly()) {
      lines.add(TrialView.LOG_ENDS_EARLY);
    }
    Cautions.of(forecast).forEach(caution -> lines.add("! " + caution.sentence()));
    lines.addAll(assumed());
    return lines;
  }

  private List<String> table(MilestoneTable table) {
    List<String> lines = new ArrayList<>();
    if (width < TABLE_WIDTH) {
      for (MilestoneLine row : table.rows()) {
        lines.add(row.name());
        for (int i = 0; i < row.cells().size(); i++) {
          lines.add(
              "  "
                  + FIRST_COLUMN.formatted(table.spots().get(i).name())
                  + row.cells().get(i).span());
        }
      }
      return lines;
    }
    lines.add(line("", table.spots().stream().map(MilestoneTable.SpotHead::name)));
    for (MilestoneLine row : table.rows()) {
      boolean dated = row.cells().stream().anyMatch(when -> !when.moment().isEmpty());
      if (dated) {
        lines.add(
            line(row.name(), row.cells().stream().map(when -> when.moment().replace(",", ""))));
      }
      lines.add(line(dated ? "" : row.name(), row.cells().stream().map(MilestoneTable.When::span)));
    }
    return lines;
  }

  private static String line(String first, Stream<String> cells) {
    return cells
        .map(COLUMN::formatted)
        .collect(Collectors.joining("", FIRST_COLUMN.formatted(first), ""))
        .stripTrailing();
  }
}
