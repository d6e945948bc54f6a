package starchfilm.report.learnt;

import java.util.List;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Hindsight;
import starchfilm.learning.Workshop;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.Learnt;

/**
 * The lessons of the trials of one folder, and how much nearer they brought the forecasts.
 *
 * @param folder the folder's name
 * @param learnt what was learnt; nothing where the trials could teach but were not asked yet
 * @param doubted readings that hardly count, a sentence each
 * @param hindsight the dated trials that were weighed, in the order of their pours
 */
public record LearntSoFar(
    String folder, Learnt learnt, List<String> doubted, List<Hindsight> hindsight) {
  /** A miss that changed by less than this share is neither nearer nor farther. */
  private static final double SAME = 0.05;

  /** Returns whether anything was learnt, more than the hint that something could be. */
  public boolean isTaught() {
    return !learnt.equals(Learnt.NOTHING);
  }

  /** All of it, figure by figure. */
  public LearntSheet sheet() {
    return new LearntSheet(learnt);
  }

  /**
   * The effect of the plates before a trial on its forecast.
   *
   * @param look the trial looked back on
   * @return nearer, farther or as near; empty for the first plate
   */
  public String verdict(Hindsight look) {
    double ratio = look.learnt().missKg() / look.textbook().missKg();
    if (look.platesBefore() == 0) {
      return "";
    }
    return Math.abs(ratio - 1) <= SAME ? "as near" : ratio < 1 ? "nearer" : "farther";
  }

  /**
   * The lessons of the workshops of some trials.
   *
   * @param workshops the workshops
   * @param forecasts the trials
   * @param shown those of them that are looked back on
   * @return one entry a workshop that was taught; none where there is nothing to learn from
   */
  public static List<LearntSoFar> from(
      List<Workshop> workshops, List<TrialForecast> forecasts, List<TrialForecast> shown) {
    List<Trial> trials = forecasts.stream().map(TrialForecast::trial).toList();
    List<Trial> lookedBackOn = shown.stream().map(TrialForecast::trial).toList();
    List<LearntSoFar> taught =
        workshops.stream()
            .filter(Workshop::isTaught)
            .map(
                workshop ->
                    new LearntSoFar(
                        workshop.folderName(),
                        workshop.learnt(),
                        workshop.learnt().doubted().stream()
                            .map(reading -> doubt(reading, workshop, trials))
                            .toList(),
                        workshop.hindsight(trials, lookedBackOn)))
            .toList();
    boolean teachable =
        trials.stream().anyMatch(t -> t.weighingCount() > 0 || !t.seen().pulls().isEmpty());
    return taught.isEmpty() && teachable
        ? List.of(new LearntSoFar("", Learnt.NOTHING, List.of(), List.of()))
        : taught;
  }

  /** A doubted reading by its trial and the clock, where that trial is among these. */
  public static String doubt(DoubtedReading reading, Workshop workshop, List<Trial> trials) {
    return workshop
        .trialOf(reading, trials)
        .map(trial -> LearntSheet.doubt(reading, trial))
        .orElseGet(reading::sentence);
  }
}
