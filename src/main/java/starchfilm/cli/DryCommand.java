package starchfilm.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.DryingFile;
import starchfilm.report.DryingText;
import starchfilm.report.TrialForecasts;
import starchfilm.request.TrialQuestion;

/** Says when one plate is dry. */
@Command(
    name = "dry",
    sortOptions = false,
    customSynopsis = {
      "starchfilm dry FILE [what to change in it]",
      "       starchfilm dry --starch KIND MASS --water MASS --wet LENGTH [more of the trial]"
    },
    description = {
      "Forecast when a plate is skin-dry, peelable and dry through, with the"
          + " range and the curve.",
      "",
      "Give a trial file, or a recipe as options, or both: options override"
          + " the file, to see what would happen.",
      "Weighings, in the file or typed, shift the forecast and narrow it; so"
          + " does what the command learn has found in the trials beside the file."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFile:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm dry formulations/garden/4-blend.json",
      "  starchfilm dry formulations/garden/4-blend.json --wet \"4 mm\" --rh \"65 %%\"",
      "  starchfilm dry formulations/garden/4-blend.json --weighed 6h=735g --weighed 1d=700g",
      "  starchfilm dry --starch potato \"20 g\" --glycerol \"6 g\" --water \"360 g\" --wet \"3 mm\"",
      "",
      "Exit codes: 0 done, 1 could not be computed, 2 wrong usage or a fault in the file."
    })
final class DryCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "A trial file.")
  private @Nullable Path file;

  @Option(
      names = "--csv",
      paramLabel = "TABLE",
      description = "Also write the curve as CSV; - for standard output instead of the text.")
  private @Nullable String csv;

  @Option(
      names = "--json",
      paramLabel = "DATA",
      description =
          "Also write milestones, film, risks and curve as JSON; - for standard" + " output.")
  private @Nullable String json;

  private DryCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  static CommandLine of(CommandContext surroundings) {
    return OptionEntries.on(new DryCommand(surroundings), TrialQuestion.SECTIONS);
  }

  @Override
  public Integer call() {
    Optional<OutputFile> table =
        OutputFile.named("--csv", csv, OutputFile.Kind.CURVE, surroundings);
    Optional<OutputFile> data =
        OutputFile.named("--json", json, OutputFile.Kind.FORECAST, surroundings);
    OutputFile.requireOneOnStandardOutput(List.of(table, data));
    OptionEntries entries = OptionEntries.of(spec);
    OneTrial one =
        OneTrial.read(
            file,
            entries,
            "dry",
            "a trial file, or at least --starch, --water and --wet",
            surroundings);
    TrialQuestion question =
        TrialQuestion.read(
            entries, one.base(), surroundings.workingDirectory(), surroundings.clock());
    Trial trial = question.trial();
    Workshops workshops = TrialFiles.workshops(List.of(trial), surroundings);
    Workshop workshop = workshops.of(trial);
    // Its own readings are taken in anyhow.
    workshop.outdated(List.of()).ifPresent(surroundings.err()::println);
    TrialForecasts forecasts = TrialForecasts.of(List.of(trial), workshops);
    if (!forecasts.failures().isEmpty()) {
      throw CommandFailure.notComputed(forecasts.failures().get(0));
    }
    TrialAnalysis analysis = forecasts.done().get(0);
    TrialForecast forecast = analysis.forecast();
    table.ifPresent(file -> file.write(() -> DryingFile.csv(forecast, question.assumptions())));
    data.ifPresent(file -> file.write(() -> DryingFile.json(forecast, question.assumptions())));
    if (Stream.of(table, data).flatMap(Optional::stream).noneMatch(OutputFile::isStandardOutput)) {
      Stream.of(DryingText.of(analysis), told(workshop, trial), question.assumptions())
          .forEach(surroundings.out()::printSentences);
    }
    return one.exitCode();
  }

  /** What the forecast rests on beside the trial's own recipe, room and weighings. */
  private static List<String> told(Workshop workshop, Trial trial) {
    List<String> lines = new ArrayList<>();
    workshop.copyOf(trial).ifPresent(lines::add);
    lines.addAll(TrialFiles.learnt(workshop, trial));
    return lines;
  }
}
