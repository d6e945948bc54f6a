package starchfilm.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalyst;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.files.findings.PlainLine;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Workshops;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.CalendarFile;
import starchfilm.report.today.TodaySheet;
import starchfilm.today.ScaleCourse;
import starchfilm.today.Today;

/** Says what needs doing now. */
record TodayCommand(Asked asked) implements Callable<Integer> {
  private static final String CALENDAR = "today.calendar";

  @Override
  public Integer call() {
    Results results = asked.results().to(CALENDAR, OutputKind.CALENDAR);
    List<Path> paths = asked.paths("here.files");
    TrialFiles files = TrialFiles.read(asked, paths.isEmpty() ? List.of(Path.of("")) : paths);
    files.tellFaults();
    Workshops workshops = asked.workshops(files.trials());
    LocalDateTime now = LocalDateTime.now(asked.clock());
    TrialAnalyst analyst = new TrialAnalyst(new TrialForecaster(workshops));
    TrialForecasts forecasts =
        TrialForecasts.of(
            Today.alike(files.trials(), now).stream().map(Today.Alike::as).toList(),
            analyst::outline);
    forecasts.failures().stream().sorted().forEach(asked.err()::println);
    Map<Trial, TrialForecast> made =
        forecasts.forecasts().stream()
            .collect(Collectors.toMap(TrialForecast::trial, Function.identity()));
    Today today =
        Today.of(
            files.trials(), now, trial -> Optional.ofNullable(made.get(trial)), ScaleCourse::of);
    results.write(
        CALENDAR,
        () -> CalendarFile.of(today, asked.clock().instant(), trial -> PlainLine.of(trial.file())));
    results.show(TodaySheet.of(today, workshops));
    return files.exitCode(forecasts.failures().isEmpty());
  }
}
