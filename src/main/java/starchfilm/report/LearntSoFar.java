package starchfilm.report;

import java.util.List;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Hindsight;
import starchfilm.learning.Workshop;
import starchfilm.learnt.Learnt;
import starchfilm.trial.Trial;

/**
 * What the trials of one folder taught, and how much nearer that brought their forecasts.
 *
 * @param folder the folder's name
 * @param learnt what was learnt; nothing where the trials could teach but were not asked yet
 * @param hindsight the dated trials that were weighed, in the order of their pours
 */
public record LearntSoFar(String folder, Learnt learnt, List<Hindsight> hindsight) {
  /** Copies the list. */
  public LearntSoFar {
    hindsight = List.copyOf(hindsight);
  }

  /** What the workshops of some trials taught; none where there is nothing to learn from. */
  static List<LearntSoFar> from(List<Workshop> workshops, List<TrialForecast> forecasts) {
    List<Trial> trials = forecasts.stream().map(TrialForecast::trial).toList();
    List<Trial> shown = trials.subList(ComparisonPage.firstApart(trials.size()), trials.size());
    List<LearntSoFar> taught =
        workshops.stream()
            .filter(Workshop::isTaught)
            .map(
                workshop ->
                    new LearntSoFar(
                        workshop.folderName(), workshop.learnt(), workshop.hindsight(shown)))
            .toList();
    boolean teachable =
        trials.stream().anyMatch(t -> !t.weighings().isEmpty() || !t.pulls().isEmpty());
    return taught.isEmpty() && teachable
        ? List.of(new LearntSoFar("", Learnt.NOTHING, List.of()))
        : taught;
  }
}
