package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import starchfilm.files.findings.Fault;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.planning.Plan;
import starchfilm.planning.Planner;
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
@Command(
    name = "plan",
    sortOptions = false,
    customSynopsis = {"starchfilm plan --glycerol MASS --starch KIND [--plates PLATES] [options]"},
    description = {
      "Find recipes for the glycerol you have: what to weigh out, how thick"
          + " to pour, what film it makes, and how likely it is to be ready by the"
          + " date.",
      "",
      "You get up to four recipes: the safest, the one with the most film,"
          + " the one ready soonest, and the one closest to your wish. Amounts are"
          + " rounded to the balance before they are forecast."
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm plan --glycerol 250g --purity 82%% --salt 3%% --origin recovered \\",
      "      --starch potato --plates \"4x300x200mm glass\" --feel flexible --room 19C,55%% --by 5d \\",
      "      --sheet sheets.html --save trials",
      "  starchfilm plan --glycerol 250g --origin bought --starch potato --plates \"2x300x200mm\" \\",
      "      --room 20C,50%% --pieces \"40 of 60x90 mm\"",
      "  starchfilm plan --glycerol 250g --purity 99%% --origin bought --starch potato \\",
      "      --plates \"10x300x200mm glass\" --room 20C,50%% --vary glycerol 15,20,25,30,35",
      "",
      "Exit codes: 0 done, 1 nothing fits (what would help is printed), 2" + " wrong input."
    })
final class PlanCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Mixin private DataOptions dataOptions = new DataOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--sheet",
      paramLabel = "PAGE",
      description =
          "Also write weigh-out sheets to print, one page per recipe; - for" + " standard output.")
  private @Nullable String sheet;

  @Option(
      names = "--labels",
      paramLabel = "PAGE",
      description = "Also write labels to stick on the plates; - for standard output.")
  private @Nullable String labels;

  @Option(
      names = "--save",
      paramLabel = "FOLDER",
      description =
          "Also write one trial file per recipe into this folder; nothing is" + " overwritten.")
  private @Nullable String folder;

  private PlanCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  static CommandLine of(CommandContext surroundings) {
    return OptionEntries.on(new PlanCommand(surroundings), PlanQuestion.SECTIONS);
  }

  @Override
  public Integer call() {
    Optional<OutputFile> page = output("--sheet", sheet, OutputFile.Kind.SHEETS);
    Optional<OutputFile> labelPage = output("--labels", labels, OutputFile.Kind.LABELS);
    DataOptions.Places places = dataOptions.places(surroundings);
    OutputFile.requireOneOnStandardOutput(List.of(page, labelPage, places.table(), places.data()));
    PlanQuestion question =
        PlanQuestion.read(
            OptionEntries.of(spec), surroundings.workingDirectory(), surroundings.clock());
    boolean toTerminal =
        Stream.of(page, labelPage, places.table(), places.data())
            .flatMap(Optional::stream)
            .noneMatch(OutputFile::isStandardOutput);
    Answered answered =
        question.series().isPresent()
            ? series(question)
            : question.pieces().isPresent() ? pieces(question) : plan(question);
    List<NamedRecipe> recipes = answered.recipes();
    if (toTerminal) {
      print(answered.lines());
    }
    places.write(answered.data());
    if (recipes.isEmpty()) {
      throw CommandFailure.notComputed("no recipe meets every wish.");
    }
    PlanReport report = new PlanReport(new PageRenderer());
    page.ifPresent(
        file -> file.write(() -> report.html(recipes, question.request(), question.assumptions())));
    labelPage.ifPresent(
        file -> file.write(() -> report.labels(recipes.stream().flatMap(PlateLabel::of).toList())));
    if (folder != null) {
      List<String> written = new PlanFiles(surroundings).write(folder, recipes, question);
      if (toTerminal) {
        print(List.of("", "Ready to take notes: " + String.join(", ", written) + "."));
      }
    }
    if (toTerminal && page.isPresent()) {
      print(List.of("Sheets to print: " + page.get().shown() + "."));
    }
    if (toTerminal && labelPage.isPresent()) {
      print(List.of("Labels to print: " + labelPage.get().shown() + "."));
    }
    return ExitCodes.DONE;
  }

  /** What was found, for a terminal and for files. */
  private record Answered(
      List<String> lines, List<NamedRecipe> recipes, Supplier<DataSheet> data) {}

  private Answered plan(PlanQuestion question) {
    Plan plan = question.answer(workshop());
    return answered(question, plan);
  }

  private static Answered answered(PlanQuestion question, Plan plan) {
    List<NamedRecipe> recipes = NamedRecipe.of(plan);
    return new Answered(
        PlanText.of(plan, question.assumptions()),
        recipes,
        () ->
            Answers.plan(recipes, question.assumptions(), Cautions.of(plan.request()))
                .tell("nothing_fits", PlanText.waysOut(plan)));
  }

  private Answered pieces(PlanQuestion question) {
    Planner.PiecesAnswer answer = question.answerPieces(workshop());
    return answer
        .pieces()
        .map(
            needed -> {
              NamedRecipe each = new NamedRecipe("Each pour", "", needed.recipe());
              List<Caution> cautions = Cautions.of(question.request());
              return new Answered(
                  PlanText.pieces(needed, each, question.assumptions(), cautions),
                  List.of(each),
                  () ->
                      Answers.pieces(needed, each, question.assumptions(), cautions)
                          .tell("what_it_takes", PiecesText.of(needed)));
            })
        .orElseGet(() -> answered(question, answer.plan()));
  }

  private Answered series(PlanQuestion question) {
    Planner.SeriesAnswer answer = question.answerSeries(workshop());
    return answer
        .series()
        .map(
            series ->
                new Answered(
                    SeriesText.of(series, question.assumptions(), PlanQuestion.STRIPS_EACH),
                    NamedRecipe.of(series),
                    () ->
                        Answers.series(
                            series,
                            question.assumptions(),
                            SeriesText.shows(series, PlanQuestion.STRIPS_EACH),
                            Cautions.of(series.request()))))
        .orElseGet(() -> answered(question, answer.plan()));
  }

  private Optional<OutputFile> output(String option, @Nullable String typed, OutputFile.Kind kind) {
    return Optional.ofNullable(typed).map(name -> OutputFile.of(option, name, kind, surroundings));
  }

  /** What earlier trials taught, where the new ones go or else where the command is run. */
  private Workshop workshop() {
    Path home = surroundings.resolve(folder == null ? Path.of("") : Path.of(folder));
    Workshops workshops = new Workshops(surroundings.clock());
    workshops.fault(home).map(Fault::sentence).ifPresent(surroundings.err()::println);
    return workshops.in(home);
  }

  private void print(List<String> lines) {
    for (String line : lines) {
      int indent = line.length() - line.stripLeading().length();
      Paragraph.of(line.strip(), " ".repeat(indent), " ".repeat(indent + 2))
          .forEach(surroundings.out()::println);
    }
  }
}
