package starchfilm.report.advice;

import java.util.List;
import java.util.Optional;
import starchfilm.advice.Diagnosis;
import starchfilm.advice.Suspicion;
import starchfilm.casting.trial.Trial;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;

/**
 * What the notebook has to say of one trial.
 *
 * @param verdict in one sentence
 * @param next what to try next; none or one
 * @param faults every fault with what may be behind it
 * @param before held against the trial before; none or one
 * @param best held against the best trial; none or one
 */
public record TrialAdviceView(
    String verdict,
    List<NextTrialView> next,
    List<FaultView> faults,
    List<ContrastView> before,
    List<ContrastView> best) {
  /**
   * A fault.
   *
   * @param what the fault, its place and time
   * @param model what the model says of it
   * @param causes what may be behind it, best first; may be empty
   * @param notNoted what would have to be noted to tell more; may be empty
   */
  public record FaultView(String what, String model, List<CauseView> causes, String notNoted) {}

  /**
   * A cause.
   *
   * @param name the cause
   * @param degree how well it explains the fault, in words
   * @param width the same, as a bar
   * @param words the figures
   */
  public record CauseView(String name, String degree, String width, String words) {}

  /**
   * The view of advice on a trial.
   *
   * @param trial the trial
   * @param advised the advice
   * @return its view
   */
  public static TrialAdviceView of(Trial trial, Advised.OfTrial advised) {
    PourCalendar calendar = new PourCalendar(trial.pouredAt());
    return new TrialAdviceView(
        advised.advice().verdict(),
        advised.advice().next().map(NextTrialView::of).stream().toList(),
        advised.advice().diagnoses().stream().map(each -> fault(each, calendar)).toList(),
        contrast(advised.before()),
        contrast(advised.best()));
  }

  private static List<ContrastView> contrast(Optional<Advised.Against> against) {
    return against.map(ContrastView::of).stream().toList();
  }

  private static FaultView fault(Diagnosis diagnosis, PourCalendar calendar) {
    return new FaultView(
        NextTrialView.sentence(PlainWords.sentence(diagnosis.fault(), calendar)),
        diagnosis.model(),
        diagnosis.suspicions().stream().map(TrialAdviceView::cause).toList(),
        diagnosis.notNoted().isEmpty()
            ? ""
            : "Not noted: " + PlainWords.list(diagnosis.notNoted()) + ". Note it next time.");
  }

  private static CauseView cause(Suspicion suspicion) {
    return new CauseView(
        NextTrialView.sentence(suspicion.cause().tableName()).replace(".", ""),
        suspicion.degree(),
        Figures.whole(100 * suspicion.support()) + "%",
        NextTrialView.sentence(suspicion.words()));
  }
}
