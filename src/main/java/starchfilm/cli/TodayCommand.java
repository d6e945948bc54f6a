package starchfilm.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecaster;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Workshops;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.CalendarFile;
import starchfilm.report.today.TodayFile;
import starchfilm.report.today.TodayText;
import starchfilm.today.Standing;
import starchfilm.today.Today;

/** Says what needs doing now. */
@Command(
    name = "today",
    sortOptions = false,
    description = {
      "List which plates need you now and why, most urgent first: peel,"
          + " weigh, look, watch for mould.",
      "",
      "For each plate: how much water is left, what the scale shows when it is peelable and dry, and"
          + " the hours in which to look."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFolder:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm today formulations/garden",
      "  starchfilm today formulations/garden --calendar looks.ics",
      "",
      "Exit codes: 0 done, 1 a plate could not be forecast, 2 a file has a"
          + " fault (the others are listed anyway)."
    })
final class TodayCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Parameters(
      arity = "0..*",
      paramLabel = "FILE-OR-FOLDER",
      description = "Trial files, or folders of them. Default: the folder you are in.")
  private List<Path> paths = List.of();

  @Option(
      names = "--csv",
      paramLabel = "TABLE",
      description = "Also write a table as CSV; - for standard output instead of the text.")
  private @Nullable String csv;

  @Option(
      names = "--json",
      paramLabel = "DATA",
      description = "Also write the same as JSON; - for standard output.")
  private @Nullable String json;

  @Option(
      names = "--calendar",
      paramLabel = "CALENDAR",
      description =
          "Also write when to look as an iCalendar file (*.ics); imported again it moves what it"
              + " brought before.")
  private @Nullable String calendar;

  TodayCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Optional<OutputFile> table =
        OutputFile.named("--csv", csv, OutputFile.Kind.TODAY_TABLE, surroundings);
    Optional<OutputFile> data =
        OutputFile.named("--json", json, OutputFile.Kind.TODAY, surroundings);
    Optional<OutputFile> looks =
        OutputFile.named("--calendar", calendar, OutputFile.Kind.CALENDAR, surroundings);
    Notebook notebook =
        TrialFiles.read(paths.isEmpty() ? List.of(Path.of("")) : paths, surroundings);
    TrialFiles.tellFaults(notebook, surroundings);
    Workshops workshops = TrialFiles.workshops(notebook.trials(), surroundings);
    List<String> failures = new ArrayList<>();
    TrialForecaster forecaster = new TrialForecaster(workshops, DryingForecaster.DRAWS);
    Today today =
        Today.of(
            notebook.trials(),
            LocalDateTime.now(surroundings.clock()),
            trial -> {
              try {
                return Optional.of(forecaster.forecast(trial));
              } catch (RuntimeException failure) {
                synchronized (failures) {
                  failures.add(TrialForecasts.failure(trial, failure));
                }
                return Optional.empty();
              }
            });
    failures.stream().sorted().forEach(surroundings.err()::println);
    table.ifPresent(file -> file.write(() -> TodayFile.csv(today, this::name)));
    data.ifPresent(file -> file.write(() -> TodayFile.json(today, this::name)));
    looks.ifPresent(
        file ->
            file.write(
                () -> CalendarFile.of(today, surroundings.clock().instant(), TodayCommand::name)));
    if (Stream.of(table, data, looks)
        .flatMap(Optional::stream)
        .noneMatch(OutputFile::isStandardOutput)) {
      surroundings.out().printSentences(TodayText.of(today));
      surroundings.out().printSentences(learnt(today, workshops));
    }
    return TrialFiles.exitCode(notebook, failures.isEmpty());
  }

  /** Whether the forecasts are corrected for the rooms. */
  private static List<String> learnt(Today today, Workshops workshops) {
    List<Trial> drying =
        today.standings().stream().map(plate -> plate.forecast().trial()).distinct().toList();
    List<String> rooms =
        drying.stream()
            .flatMap(trial -> TrialFiles.learnt(workshops.of(trial), trial).stream())
            .distinct()
            .toList();
    return rooms.isEmpty() && !drying.isEmpty()
        ? List.of("Nothing was learnt of these rooms; the forecasts are those of the textbook.")
        : rooms;
  }

  /** From where the command runs, with / between folders. */
  private String name(Standing standing) {
    return name(standing.forecast().trial());
  }

  private static String name(Trial trial) {
    return trial.file().toString().replace('\\', '/');
  }
}
