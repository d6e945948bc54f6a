package starchfilm.cli;

import java.util.List;
import java.util.concurrent.Callable;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.Workshops;
import starchfilm.report.plan.ThicknessSheet;
import starchfilm.request.ThicknessQuestion;

/** Says how thick a paste may be poured for a date. */
record ThicknessCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    Results results = asked.results();
    OneTrial one = OneTrial.read(asked, "a trial file, or at least --starch and --water");
    ThicknessQuestion question =
        ThicknessQuestion.read(asked.entries(), one.base(), asked.here(), asked.clock());
    Trial trial = question.trial();
    Workshops workshops = asked.workshops(List.of(trial));
    ThicknessSheet sheet = ThicknessSheet.of(question, workshops.of(trial));
    results.show(sheet);
    return sheet.isAnyFound() ? one.exitCode() : ExitCodes.NOT_COMPUTED;
  }
}
