package starchfilm.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
import starchfilm.trial.Fault;
import starchfilm.trial.Notebook;
import starchfilm.trial.NotebookReader;
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

  private static final ObjectMapper MAPPER = new ObjectMapper();

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
    TrialForecasts forecasts =
        TrialForecasts.of(
            List.of(trial()), new TrialForecaster(FactorModel.textbook(), DRAWS)::forecast);
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

  private Trial trial() {
    Notebook notebook = read();
    notebook.faults().forEach(fault -> surroundings.err().println(fault.sentence()));
    notebook.notices().forEach(notice -> surroundings.err().println(notice.sentence()));
    if (notebook.trials().size() == 1) {
      return notebook.trials().get(0);
    }
    throw CommandFailure.wrongInput(
        notebook.faults().isEmpty()
            ? "dry takes one trial, and " + file + " holds " + notebook.trials().size() + "."
            : "no forecast without a sound trial.");
  }

  private Notebook read() {
    if (file == null) {
      if (options.isEmpty()) {
        throw CommandFailure.wrongInput(
            "dry needs a trial file, or at least --starch, --water and --wet.");
      }
      ObjectNode trial = MAPPER.createObjectNode().put("name", "as typed");
      return asTyped(Path.of("as-typed"), trial);
    }
    Notebook notebook = TrialFiles.read(List.of(file), surroundings);
    if (options.isEmpty() || notebook.trials().size() != 1 || !notebook.faults().isEmpty()) {
      return notebook;
    }
    Path path = notebook.trials().get(0).file();
    try {
      if (MAPPER.readTree(Files.readString(path)) instanceof ObjectNode trial) {
        // What happened to the real plate says nothing about the one that is asked for.
        trial.remove(List.of("weighings", "faults", "pulls", "dry_thickness_um", "rating"));
        return asTyped(path, trial);
      }
      return notebook;
    } catch (IOException changed) {
      throw CommandFailure.wrongInput(file + ": changed while it was read; try again.");
    }
  }

  private Notebook asTyped(Path place, ObjectNode trial) {
    Notebook read;
    try {
      read =
          NotebookReader.readText(
              surroundings.resolve(place), MAPPER.writeValueAsString(options.over(trial)));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree in memory cannot fail", impossible);
    }
    return new Notebook(
        read.trials(), read.faults().stream().map(DryCommand::typed).toList(), read.notices());
  }

  /** What was typed has no lines; its fault must not send the reader to one. */
  private static Fault typed(Fault fault) {
    return new Fault(
        "as typed",
        OptionalInt.empty(),
        OptionalInt.empty(),
        fault.field(),
        fault.given(),
        fault.allowed(),
        fault.mend());
  }
}
