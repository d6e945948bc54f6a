package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.drying.FactorModel;
import starchfilm.report.DryingFile;
import starchfilm.report.DryingText;
import starchfilm.report.TrialForecasts;
import starchfilm.trial.Trial;
import starchfilm.trial.TrialForecast;
import starchfilm.trial.TrialForecaster;

/** Says when one plate is dry. */
@Command(
    name = "dry",
    sortOptions = false,
    customSynopsis = {
      "starchfilm dry FILE [what to change in it]",
      "       starchfilm dry --starch KIND MASS --water MASS --wet LENGTH [more of the trial]"
    },
    description = {
      "Say when a plate is skin-dry, peelable and dry through, with the range and the curve.",
      "",
      "Give a trial file, or a recipe as options, or both: options put over a file ask what if."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFile:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm dry formulations/garden/4-blend.json",
      "  starchfilm dry formulations/garden/4-blend.json --wet \"4 mm\" --rh \"65 %%\"",
      "  starchfilm dry --starch potato \"20 g\" --glycerol \"6 g\" --water \"360 g\" --wet \"3 mm\"",
      "",
      "Exit codes: 0 done, 1 could not be computed, 2 wrong usage or a fault in the file."
    })
final class DryCommand implements Callable<Integer> {
  /** Likely cases solved: enough for the 10 and 90 % points to stand still at two figures. */
  private static final int DRAWS = 1000;

  private final Surroundings surroundings;

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
      description = "Also write milestones and curve as JSON; - for standard output likewise.")
  private @Nullable String json;

  @ArgGroup(validate = false, heading = "%nThe trial, or what to change in it:%n")
  private RecipeOptions options = new RecipeOptions();

  DryCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Optional<OutputFile> table = output("--csv", csv, OutputFile.Kind.CURVE);
    Optional<OutputFile> data = output("--json", json, OutputFile.Kind.FORECAST);
    Trial trial =
        new OneTrial(surroundings)
            .read(file, options, "dry", "a trial file, or at least --starch, --water and --wet");
    TrialForecasts forecasts =
        TrialForecasts.of(
            List.of(trial), new TrialForecaster(FactorModel.textbook(), DRAWS)::forecast);
    if (!forecasts.failures().isEmpty()) {
      throw CommandFailure.notComputed(forecasts.failures().get(0));
    }
    TrialForecast forecast = forecasts.done().get(0);
    table.ifPresent(file -> file.write(() -> DryingFile.csv(forecast)));
    data.ifPresent(file -> file.write(() -> DryingFile.json(forecast)));
    if (Stream.of(table, data).flatMap(Optional::stream).noneMatch(OutputFile::isStandardOutput)) {
      DryingText.of(forecast).stream()
          .flatMap(line -> Paragraph.of(line, "", "  ").stream())
          .forEach(surroundings.out()::println);
    }
    return ExitCodes.DONE;
  }

  private Optional<OutputFile> output(String option, @Nullable String typed, OutputFile.Kind kind) {
    return Optional.ofNullable(typed).map(name -> OutputFile.of(option, name, kind, surroundings));
  }
}
