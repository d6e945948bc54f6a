package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.advice.Adviser;
import starchfilm.advice.RuleBook;
import starchfilm.drying.DryingForecaster;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.Comparison;
import starchfilm.report.ComparisonReport;
import starchfilm.report.PageRenderer;
import starchfilm.report.TrialForecasts;
import starchfilm.report.data.Answers;
import starchfilm.report.words.Plural;

/** Makes the comparison page. */
@Command(
    name = "compare",
    description = {
      "Compare trials on one page: what differs, what each film will be"
          + " like, when each plate is dry, and what came of it.",
      "",
      "The page is one file that needs no network. A wrong note is left"
          + " out and named, and so is a file whose recipe, plate or room is wrong;"
          + " the rest is used."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFiles:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm compare formulations/garden --out garden.html",
      "  starchfilm compare formulations/garden --csv trials.csv",
      "",
      "Exit codes: 0 done, 1 a trial could not be forecast, 2 a file has a"
          + " fault (the page is written anyway)."
    })
final class CompareCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Mixin private DataOptions dataOptions = new DataOptions();

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE-OR-FOLDER",
      description = "Trial files, or folders of them.")
  private List<Path> paths = List.of();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "PAGE",
      description =
          "Where the page goes; - for standard output. An earlier page is kept as PAGE.before. Default:"
              + " starchfilm.html, or no page beside --csv or --json.")
  private @Nullable String out;

  CompareCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    DataOptions.Places places = dataOptions.places(surroundings);
    Optional<OutputFile> page =
        Optional.ofNullable(out)
            .or(() -> places.isEmpty() ? Optional.of("starchfilm.html") : Optional.empty())
            .map(name -> OutputFile.of("--out", name, OutputFile.Kind.COMPARISON, surroundings));
    OutputFile.requireOneOnStandardOutput(List.of(page, places.table(), places.data()));
    Notebook notebook = TrialFiles.read(paths, surroundings);
    TrialFiles.tell(notebook, surroundings);
    Workshops workshops = TrialFiles.workshops(notebook.trials(), surroundings);
    workshops.outdated(notebook.trials()).forEach(surroundings.err()::println);
    workshops.copies(notebook.trials()).forEach(surroundings.err()::println);
    TrialForecasts forecasts = TrialForecasts.of(notebook.trials(), workshops);
    forecasts.failures().forEach(surroundings.err()::println);
    List<TrialForecast> trials = forecasts.forecasts();
    if (trials.isEmpty()) {
      throw forecasts.failures().isEmpty()
          ? CommandFailure.wrongInput("no trial without a fault to compare; nothing written.")
          : CommandFailure.notComputed("no trial could be forecast; nothing written.");
    }
    Comparison comparison = Comparison.of(notebook, forecasts);
    places.write(() -> Answers.compare(trials, comparison.troubles(), comparison.remarks()));
    page.ifPresent(file -> write(file, comparison, notebook, workshops));
    if (!TrialFiles.isEachUsed(notebook)) {
      surroundings.err().println("starchfilm: files with a fault are left out.");
    }
    return TrialFiles.exitCode(notebook, forecasts.failures().isEmpty());
  }

  private void write(
      OutputFile page, Comparison comparison, Notebook notebook, Workshops workshops) {
    List<Workshop> taught = workshops.all(notebook.trials());
    Adviser adviser = new Adviser(RuleBook.packed(), workshops, DryingForecaster.DRAWS);
    page.write(
        () -> new ComparisonReport(new PageRenderer()).html(comparison.with(adviser, taught)));
    if (!page.isStandardOutput()) {
      surroundings
          .out()
          .println(Plural.of(comparison.trials().size(), "trial") + " on " + page.shown() + ".");
    }
  }
}
