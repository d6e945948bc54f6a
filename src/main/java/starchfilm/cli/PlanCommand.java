package starchfilm.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.NewTrialFile;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.WriteFailure;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.PageRenderer;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanSheet;
import starchfilm.report.plan.PlannedTrial;
import starchfilm.request.PlanQuestion;

/** Plans recipes from what is at hand. */
record PlanCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    Results results =
        asked.results().to("plan.sheet", OutputKind.SHEETS).to("plan.labels", OutputKind.LABELS);
    Optional<Path> folder = asked.path("plan.save");
    PlanQuestion question = PlanQuestion.read(asked.entries(), asked.here(), asked.clock());
    PlanSheet sheet = PlanSheet.of(question, workshop());
    List<NamedRecipe> recipes = sheet.recipes();
    results.show(sheet);
    if (recipes.isEmpty()) {
      throw CommandFailure.notComputed("no recipe meets every wish.");
    }
    PlanReport report = new PlanReport(new PageRenderer());
    results.write("plan.sheet", () -> report.html(sheet));
    results.write("plan.labels", () -> report.labels(sheet.labels()));
    if (folder.isPresent()) {
      List<String> written = saved(folder.get(), recipes, question);
      results.print(List.of("", "Ready to take notes: " + String.join(", ", written) + "."));
    }
    results.say("plan.sheet", "Sheets to print: ", ".");
    results.say("plan.labels", "Labels to print: ", ".");
    return ExitCodes.DONE;
  }

  /** The recipes as trial files in a folder, which is made where it is missing. */
  private List<String> saved(Path typed, List<NamedRecipe> recipes, PlanQuestion question) {
    Path folder = asked.resolve(typed).toAbsolutePath();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw CommandFailure.wrongInput(
          "--save " + typed + " is a file; name a folder for the trial files");
    }
    List<NewTrialFile> trials =
        recipes.stream()
            .map(
                recipe ->
                    new NewTrialFile(
                        recipe.title(),
                        PlannedTrial.text(
                            recipe, question.request(), question.log(), question.isJarIn(folder))))
            .toList();
    try {
      Files.createDirectories(folder);
      return NewTrialFile.write(trials, question.log(), folder).stream()
          .map(file -> typed + "/" + file.getFileName())
          .toList();
    } catch (NotWrittenException refused) {
      throw CommandFailure.wrongInput("--save " + typed + ": " + refused.getMessage());
    } catch (IOException failure) {
      throw CommandFailure.wrongInput(
          "--save " + typed + ": " + WriteFailure.of(failure).sentence() + ".");
    }
  }

  /** What earlier trials taught, where the new ones go or else where the command is run. */
  private Workshop workshop() {
    Path home = asked.resolve(asked.path("plan.save").orElse(Path.of("")));
    Workshops workshops = new Workshops(asked.clock());
    workshops.fault(home).map(Fault::sentence).ifPresent(asked.err()::println);
    return workshops.in(home);
  }
}
