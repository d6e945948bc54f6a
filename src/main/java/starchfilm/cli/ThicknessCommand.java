package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.Workshops;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.Answers;
import starchfilm.report.plan.ThicknessText;
import starchfilm.request.ThicknessQuestion;

/** Says how thick a paste may be poured for a date. */
@Command(
    name = "thickness",
    sortOptions = false,
    customSynopsis = {
      "starchfilm thickness FILE --by WHEN [what to change in it]",
      "       starchfilm thickness --starch KIND MASS --water MASS --by WHEN [more of the trial]"
    },
    description = {
      "Work out how thick you can pour a paste for it to be dry by a date:"
          + " the wet thickness that is dry in time in half and in 9 of 10 likely"
          + " cases, with the grams for a plate.",
      "",
      "Give a trial file, or a recipe as options, or both: options override"
          + " the file, to see what would happen."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFile:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm thickness formulations/garden/4-blend.json --by 5d",
      "  starchfilm thickness --starch potato \"20 g\" --glycerol \"6 g\" --water \"400 g\" \\",
      "      --plate \"300x200mm glass\" --room 19C,55%% --by friday",
      "",
      "Exit codes: 0 done, 1 no pour is dry by then, 2 wrong usage or a fault in the file."
    })
final class ThicknessCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Mixin private DataOptions dataOptions = new DataOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "A trial file.")
  private @Nullable Path file;

  private ThicknessCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  static CommandLine of(CommandContext surroundings) {
    return OptionEntries.on(new ThicknessCommand(surroundings), ThicknessQuestion.SECTIONS);
  }

  @Override
  public Integer call() {
    DataOptions.Places places = dataOptions.places(surroundings);
    OptionEntries entries = OptionEntries.of(spec);
    OneTrial one =
        OneTrial.read(
            file,
            entries,
            "thickness",
            "a trial file, or at least --starch and --water",
            surroundings);
    ThicknessQuestion question =
        ThicknessQuestion.read(
            entries, one.base(), surroundings.workingDirectory(), surroundings.clock());
    Trial trial = question.trial();
    Workshops workshops = TrialFiles.workshops(List.of(trial), surroundings);
    ThicknessAnswer answer = question.answer(workshops.of(trial));
    List<Caution> cautions = Cautions.of(trial.recipe(), answer.request().casting().place());
    places.write(() -> Answers.thickness(answer, question.assumptions(), cautions));
    if (!places.isOnStandardOutput()) {
      Stream.of(
              ThicknessText.of(answer, trial),
              question.assumptions(),
              cautions.stream().map(caution -> "! " + caution.sentence()).toList())
          .forEach(surroundings.out()::printSentences);
    }
    return ThicknessText.isAnyFound(answer) ? one.exitCode() : ExitCodes.NOT_COMPUTED;
  }
}
