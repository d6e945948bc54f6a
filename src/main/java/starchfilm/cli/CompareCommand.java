package starchfilm.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import starchfilm.advice.Adviser;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.files.notebook.Notebook;
import starchfilm.learning.Workshops;
import starchfilm.numerics.units.Plural;
import starchfilm.report.Comparison;
import starchfilm.report.ComparisonReport;
import starchfilm.report.PageRenderer;
import starchfilm.report.TrialForecasts;
import starchfilm.report.learnt.LearntSheet;

/** Makes the comparison page. */
record CompareCommand(Asked asked) implements Callable<Integer> {
  private static final String PAGE = "compare.out";

  @Override
  public Integer call() {
    Results results = asked.results();
    Optional<String> page =
        asked
            .word(PAGE)
            .or(() -> results.isEmpty() ? Optional.of("starchfilm.html") : Optional.empty());
    results.to(PAGE, page, OutputKind.COMPARISON);
    TrialFiles files = TrialFiles.read(asked, asked.paths("files.files"));
    files.tell();
    Notebook notebook = files.notebook();
    Workshops workshops = asked.workshops(files.trials());
    workshops.outdated(files.trials()).forEach(asked.err()::println);
    files.tellCopies();
    TrialForecasts forecasts =
        files.forecasts(trials -> TrialForecasts.of(trials, workshops), "to compare");
    Comparison comparison = Comparison.of(notebook, forecasts);
    results.write(
        () -> comparison.table().tell("learnt", LearntSheet.told(workshops, files.trials())));
    if (results.has(PAGE)) {
      Comparison whole = comparison.with(new Adviser(workshops), workshops.all(notebook.trials()));
      results.write(PAGE, () -> new ComparisonReport(new PageRenderer()).html(whole));
      results.say(PAGE, Plural.of(comparison.trials().size(), "trial") + " on ", ".");
      results.print(whole.advised().lines());
    }
    if (!files.isEachUsed()) {
      asked.err().println("starchfilm: files with a fault are left out.");
    }
    return files.exitCode(forecasts.failures().isEmpty());
  }
}
