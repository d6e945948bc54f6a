package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.change.TrialAnalysis;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;

/** A drying forecast for a terminal: plain lines that need no colour. */
public final class DryingText {
  private static final int FIRST_COLUMN = 12;
  private static final int COLUMN = 23;
  private static final int TABLE_WIDTH = 78;

  private DryingText() {}

  /**
   * The whole forecast.
   *
   * @param analysis the trial
   * @param width characters of the terminal, 40 or more: table and curve fit into it
   * @return lines; long sentences are not broken
   */
  public static List<String> of(TrialAnalysis analysis, int width) {
    TrialForecast trial = analysis.forecast();
    TrialView view = TrialView.of(analysis);
    List<String> lines = new ArrayList<>();
    view.odd().forEach(sentence -> lines.add("Odd: " + sentence));
    lines.add(view.name() + " (" + view.calendar().pour() + ")");
    lines.add(
        "%s: %s, %s, air at %s"
            .formatted(
                trial.trial().casting().place().name(),
                RoomWords.temperature(trial.trial().casting().room()),
                RoomWords.humidity(trial.trial().casting().room()),
                RoomWords.speed(trial.trial().casting().room())));
    lines.add(
        "%s on %s; %s."
            .formatted(
                view.pour().wetLabel(),
                RecipeWords.plate(trial.trial().casting().plate()),
                view.pour().dryLabel()));
    lines.add("");
    lines.add(view.headline());
    trial.trial().wanted().byS().ifPresent(byS -> lines.add(Headline.inTime(trial, byS)));
    if (!view.takenIn().isEmpty()) {
      lines.add(view.takenIn());
    }
    lines.addAll(view.questions());
    lines.add("");
    lines.addAll(milestones(view.milestones(), width));
    lines.add("");
    view.milestones().rows().forEach(row -> lines.add(row.name() + ": " + row.meaning() + "."));
    if (!view.milestones().scaleTest().isEmpty()) {
      lines.add(view.milestones().scaleTest());
    }
    lines.add("");
    lines.addAll(CurvePlot.of(trial, width));
    lines.add("");
    for (RiskTable.Row risk : view.risks()) {
      lines.add(
          (risk.name() + ": " + risk.level() + ". " + risk.reason() + " " + risk.remedy()).strip());
    }
    for (Happened.Seen seen : view.happened().faults()) {
      if (!seen.todo().isEmpty()) {
        lines.add("Noted: " + seen.what() + ". " + seen.todo());
      }
    }
    view.sharpen().stream()
        .limit(1)
        .forEach(
            driver ->
                lines.add(
                    "Most of the range (%s) comes from %s. %s"
                        .formatted(driver.share(), driver.what(), driver.how())));
    if (!view.notRecorded().isEmpty()) {
      lines.add(
          view.notRecorded().stream()
              .map(NotRecorded::words)
              .collect(Collectors.joining("; ", "Not recorded, so assumed: ", ".")));
    }
    PlainWords.extrapolations(trial.drying().extrapolations())
        .forEach(sentence -> lines.add("Beyond the range of a rule: " + sentence));
    if (trial.drying().logEndsEarly()) {
      lines.add(TrialView.LOG_ENDS_EARLY);
    }
    view.safety().forEach(caution -> lines.add("! " + caution.sentence()));
    return lines;
  }

  private static List<String> milestones(MilestoneTable table, int width) {
    List<String> lines = new ArrayList<>();
    if (width < TABLE_WIDTH) {
      for (MilestoneTable.Row row : table.rows()) {
        lines.add(row.name());
        for (int i = 0; i < row.cells().size(); i++) {
          lines.add(
              "  " + padded(table.spots().get(i).name(), FIRST_COLUMN) + row.cells().get(i).span());
        }
      }
      return lines;
    }
    StringBuilder heads = new StringBuilder(" ".repeat(FIRST_COLUMN));
    table.spots().forEach(spot -> heads.append(padded(spot.name(), COLUMN)));
    lines.add(heads.toString().stripTrailing());
    for (MilestoneTable.Row row : table.rows()) {
      StringBuilder moments = new StringBuilder(padded(row.name(), FIRST_COLUMN));
      StringBuilder spans = new StringBuilder(" ".repeat(FIRST_COLUMN));
      for (MilestoneTable.When when : row.cells()) {
        moments.append(padded(when.moment().replace(",", ""), COLUMN));
        spans.append(padded(when.span(), COLUMN));
      }
      lines.add(moments.toString().stripTrailing());
      lines.add(spans.toString().stripTrailing());
    }
    return lines;
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
