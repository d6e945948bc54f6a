package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Workshops;
import starchfilm.report.PageRenderer;
import starchfilm.report.TrialForecasts;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlateLabel;
import starchfilm.report.words.Plural;

/** Makes weigh-out sheets and labels of trials. */
@Command(
    name = "sheet",
    sortOptions = false,
    description = {
      "Make weigh-out sheets to print, one A4 page per trial, or labels to"
          + " stick on the plates, many on a page.",
      "",
      "A label shows name, pour, empty plate, when to look, and what is in"
          + " it; what the file does not say is left blank, to be filled in by hand."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFiles:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm sheet formulations/garden/4-blend.json --out blend.html --labels labels.html",
      "",
      "Exit codes: 0 done, 1 a trial could not be forecast, 2 a file has a"
          + " fault (the others are printed anyway)."
    })
final class SheetCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE-OR-FOLDER",
      description = "Trial files, or folders of them.")
  private List<Path> paths = List.of();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "PAGE",
      description = "Where the weigh-out sheets go; - for standard output.")
  private @Nullable String out;

  @Option(
      names = "--labels",
      paramLabel = "PAGE",
      description = "Where the labels go, one per plate; - for standard output.")
  private @Nullable String labels;

  SheetCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (out == null && labels == null) {
      throw CommandFailure.wrongInput(
          "sheet needs somewhere to write: --out sheets.html, --labels labels.html, or both.");
    }
    Optional<OutputFile> sheetPage =
        OutputFile.named("--out", out, OutputFile.Kind.SHEETS, surroundings);
    Optional<OutputFile> labelPage =
        OutputFile.named("--labels", labels, OutputFile.Kind.LABELS, surroundings);
    OutputFile.requireOneOnStandardOutput(List.of(sheetPage, labelPage));
    Notebook notebook = TrialFiles.read(paths, surroundings);
    TrialFiles.tellFaults(notebook, surroundings);
    TrialForecasts forecasts =
        TrialForecasts.of(notebook.trials(), new Workshops(surroundings.clock()));
    forecasts.failures().forEach(surroundings.err()::println);
    List<TrialForecast> trials = forecasts.forecasts();
    if (trials.isEmpty()) {
      throw forecasts.failures().isEmpty()
          ? CommandFailure.wrongInput("no trial without a fault to print; nothing written.")
          : CommandFailure.notComputed("no trial could be forecast; nothing written.");
    }
    PlanReport report = new PlanReport(new PageRenderer());
    List<PlateLabel> plates = trials.stream().flatMap(PlateLabel::of).toList();
    sheetPage.ifPresent(page -> page.write(() -> report.html(trials)));
    labelPage.ifPresent(page -> page.write(() -> report.labels(plates)));
    say(sheetPage, Plural.of(trials.size(), "sheet"));
    say(labelPage, Plural.of(plates.size(), "label"));
    return TrialFiles.exitCode(notebook, forecasts.failures().isEmpty());
  }

  private void say(Optional<OutputFile> page, String what) {
    page.filter(file -> !file.isStandardOutput())
        .ifPresent(file -> surroundings.err().println(what + " to print: " + file.shown() + "."));
  }
}
