package starchfilm.cli;

import java.util.List;
import java.util.concurrent.Callable;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.Workshops;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.Answers;
import starchfilm.report.plan.ThicknessText;
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
    ThicknessAnswer answer = question.answer(workshops.of(trial));
    List<Caution> cautions = Cautions.of(trial.recipe(), answer.request().casting().place());
    results.write(() -> Answers.thickness(answer, question.assumptions(), cautions));
    results.print(
        ThicknessText.of(answer, trial),
        question.assumptions(),
        cautions.stream().map(caution -> "! " + caution.sentence()).toList());
    return ThicknessText.isAnyFound(answer) ? one.exitCode() : ExitCodes.NOT_COMPUTED;
  }
}
