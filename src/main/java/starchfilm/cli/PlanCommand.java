package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.files.findings.Fault;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.PageRenderer;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanSheet;
import starchfilm.request.PlanQuestion;

/** Plans recipes from what is at hand. */
record PlanCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    Results results =
        asked.results().to("plan.sheet", OutputKind.SHEETS).to("plan.labels", OutputKind.LABELS);
    Optional<Path> folder = asked.path("plan.save");
    PlanQuestion question = PlanQuestion.read(asked.entries(), asked.here(), asked.clock());
    PlanSheet sheet = new PlanSheet(question, question.answer(workshop()));
    List<NamedRecipe> recipes = sheet.recipes();
    results.show(sheet);
    if (recipes.isEmpty()) {
      throw CommandFailure.notComputed("no recipe meets every wish.");
    }
    PlanReport report = new PlanReport(new PageRenderer());
    results.write("plan.sheet", () -> report.html(sheet));
    results.write("plan.labels", () -> report.labels(sheet.labels()));
    if (folder.isPresent()) {
      List<String> written = new PlanFiles(asked).write(folder.get(), recipes, question);
      results.print(List.of("", "Ready to take notes: " + String.join(", ", written) + "."));
    }
    results.say("plan.sheet", "Sheets to print: ", ".");
    results.say("plan.labels", "Labels to print: ", ".");
    return ExitCodes.DONE;
  }

  /** What earlier trials taught, where the new ones go or else where the command is run. */
  private Workshop workshop() {
    Path home = asked.resolve(asked.path("plan.save").orElse(Path.of("")));
    Workshops workshops = new Workshops(asked.clock());
    workshops.fault(home).map(Fault::sentence).ifPresent(asked.err()::println);
    return workshops.in(home);
  }
}
