package starchfilm.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.DryingSheet;
import starchfilm.report.TrialForecasts;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.request.TrialQuestion;

/** Says when one plate is dry. */
record DryCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    Results results = asked.results(OutputKind.CURVE, OutputKind.FORECAST);
    OneTrial one = OneTrial.read(asked, "a trial file, or at least --starch, --water and --wet");
    TrialQuestion question =
        TrialQuestion.read(asked.entries(), one.base(), asked.here(), asked.clock());
    Trial trial = question.trial();
    Workshops workshops = asked.workshops(List.of(trial));
    Workshop workshop = workshops.of(trial);
    // Its own readings are taken in anyhow.
    workshop.outdated(List.of()).ifPresent(asked.err()::println);
    TrialForecasts forecasts = TrialForecasts.of(List.of(trial), workshops);
    if (!forecasts.failures().isEmpty()) {
      throw CommandFailure.notComputed(forecasts.failures().get(0));
    }
    TrialAnalysis analysis = forecasts.done().get(0);
    results.show(
        new DryingSheet(analysis, told(workshop, trial), question.assumptions(), Paragraph.WIDTH));
    return one.exitCode();
  }

  /** What the forecast rests on beside the trial's own recipe, room and weighings. */
  private static List<String> told(Workshop workshop, Trial trial) {
    return Stream.concat(
            workshop.copyOf(trial).stream(),
            LearntSheet.told(workshop, trial.casting().place()).stream())
        .toList();
  }
}
