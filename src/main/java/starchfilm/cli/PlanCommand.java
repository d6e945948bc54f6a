package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.files.findings.Fault;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.planning.Plan;
import starchfilm.planning.Series;
import starchfilm.report.PageRenderer;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.Answers;
import starchfilm.report.data.DataSheet;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PiecesText;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanText;
import starchfilm.report.plan.PlateLabel;
import starchfilm.report.plan.SeriesText;
import starchfilm.request.PlanQuestion;

/** Plans recipes from what is at hand. */
record PlanCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    Results results =
        asked.results().to("plan.sheet", OutputKind.SHEETS).to("plan.labels", OutputKind.LABELS);
    Optional<Path> folder = asked.path("plan.save");
    PlanQuestion question = PlanQuestion.read(asked.entries(), asked.here(), asked.clock());
    Plan found = question.answer(workshop());
    List<NamedRecipe> recipes = NamedRecipe.of(found);
    results.print(lines(question, found));
    results.write(() -> data(question, found, recipes));
    if (recipes.isEmpty()) {
      throw CommandFailure.notComputed("no recipe meets every wish.");
    }
    PlanReport report = new PlanReport(new PageRenderer());
    results.write(
        "plan.sheet", () -> report.html(recipes, question.request(), question.assumptions()));
    results.write(
        "plan.labels", () -> report.labels(recipes.stream().flatMap(PlateLabel::of).toList()));
    if (folder.isPresent()) {
      List<String> written = new PlanFiles(asked).write(folder.get(), recipes, question);
      results.print(List.of("", "Ready to take notes: " + String.join(", ", written) + "."));
    }
    results.say("plan.sheet", "Sheets to print: ", ".");
    results.say("plan.labels", "Labels to print: ", ".");
    return ExitCodes.DONE;
  }

  private static List<String> lines(PlanQuestion question, Plan found) {
    List<String> assumed = question.assumptions();
    return found
        .series()
        .map(series -> SeriesText.of(series, assumed, PlanQuestion.STRIPS_EACH))
        .orElseGet(() -> PlanText.of(found, assumed));
  }

  private static DataSheet data(PlanQuestion question, Plan found, List<NamedRecipe> recipes) {
    List<String> assumed = question.assumptions();
    List<Caution> cautions = Cautions.of(question.request());
    if (found.series().isPresent()) {
      Series series = found.series().get();
      return Answers.series(
          series, assumed, SeriesText.shows(series, PlanQuestion.STRIPS_EACH), cautions);
    }
    return found
        .pieces()
        .map(
            needed ->
                Answers.pieces(needed, recipes.get(0), assumed, cautions)
                    .tell("what_it_takes", PiecesText.of(needed)))
        .orElseGet(
            () ->
                Answers.plan(recipes, assumed, cautions)
                    .tell("nothing_fits", PlanText.waysOut(found)));
  }

  /** What earlier trials taught, where the new ones go or else where the command is run. */
  private Workshop workshop() {
    Path home = asked.resolve(asked.path("plan.save").orElse(Path.of("")));
    Workshops workshops = new Workshops(asked.clock());
    workshops.fault(home).map(Fault::sentence).ifPresent(asked.err()::println);
    return workshops.in(home);
  }
}
