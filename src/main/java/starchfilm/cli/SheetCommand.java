package starchfilm.cli;

import java.util.List;
import java.util.concurrent.Callable;
import starchfilm.change.TrialAnalyst;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.numerics.units.Plural;
import starchfilm.report.PageRenderer;
import starchfilm.report.TrialForecasts;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlateLabel;

/** Makes weigh-out sheets and labels of trials. */
record SheetCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    if (!asked.has("sheet.out") && !asked.has("sheet.labels")) {
      throw CommandFailure.wrongInput(
          "sheet needs somewhere to write: --out sheets.html, --labels labels.html, or both.");
    }
    Results results =
        new Results(asked).to("sheet.out", OutputKind.SHEETS).to("sheet.labels", OutputKind.LABELS);
    TrialFiles files = TrialFiles.read(asked, asked.paths("files.files"));
    files.tellFaults();
    TrialAnalyst analyst = new TrialAnalyst(new TrialForecaster(asked.workshops(files.trials())));
    TrialForecasts forecasts =
        files.forecasts(trials -> TrialForecasts.of(trials, analyst::outline), "to print");
    List<TrialForecast> trials = forecasts.forecasts();
    PlanReport report = new PlanReport(new PageRenderer());
    List<PlateLabel> plates = trials.stream().flatMap(PlateLabel::of).toList();
    results.write("sheet.out", () -> report.html(trials));
    results.write("sheet.labels", () -> report.labels(plates));
    results.say("sheet.out", Plural.of(trials.size(), "sheet") + " to print: ", ".");
    results.say("sheet.labels", Plural.of(plates.size(), "label") + " to print: ", ".");
    return files.exitCode(forecasts.failures().isEmpty());
  }
}
