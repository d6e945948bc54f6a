package starchfilm.report.advice;

import java.util.List;
import starchfilm.advice.NotebookAdvice;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.words.Anchor;

/**
 * What to try next over all trials.
 *
 * @param number number of the trial to go on from
 * @param anchor its place on this page
 * @param name what its maker calls it
 * @param verdict why that one, and what to do
 * @param next the change to make there; none or one
 * @param taught what the faults of the notebook teach together; may be empty
 * @param leftOut a sentence on trials that are not advised on; may be empty
 */
public record NotebookAdviceView(
    int number,
    String anchor,
    String name,
    String verdict,
    List<NextTrialView> next,
    List<String> taught,
    String leftOut) {
  /**
   * The view of advice over all trials.
   *
   * @param advised the advice
   * @param trials the trials it is on
   * @return its view; none where no plate has a history
   */
  public static List<NotebookAdviceView> of(Advised advised, List<TrialForecast> trials) {
    return advised.over().map(over -> of(over, advised, trials)).stream().toList();
  }

  private static NotebookAdviceView of(
      NotebookAdvice over, Advised advised, List<TrialForecast> trials) {
    int number = trials.indexOf(over.from()) + 1;
    return new NotebookAdviceView(
        number,
        Anchor.ofTrial(number),
        over.from().trial().name(),
        over.verdict(),
        over.next().map(NextTrialView::of).stream().toList(),
        over.taught(),
        advised.leftOut() == 0
            ? ""
            : "There is advice on each of the latest "
                + Advised.MOST
                + "; compare fewer to see the others'.");
  }
}
