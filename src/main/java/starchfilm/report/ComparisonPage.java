package starchfilm.report;

import java.util.List;
import java.util.stream.IntStream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.caution.Cautions;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.Scatter;
import starchfilm.report.words.Anchor;

/**
 * Everything on a comparison page.
 *
 * @param invented true where some trial is made up as an example
 * @param list every trial in a line, where they are many; none or one
 * @param curves the drying of all trials on one axis; of many, of the last; none or one
 * @param ready when each trial is ready, where they are too many for the curves
 * @param against the trial the others are held against, in words; empty for one alone
 * @param trials one by one; of very many the last; none where they have pages of their own
 * @param earlier how many trials stand only in the table
 */
record ComparisonPage(
    Comparison comparison,
    String title,
    boolean invented,
    DryingScale scale,
    List<TrialList> list,
    List<CurveFigure> curves,
    List<Scatter> outcomes,
    List<TrialForecast> ready,
    SideBySide table,
    String against,
    List<Seen> photographed,
    List<TrialView> trials,
    int earlier,
    Cautions.OfPage safety) {
  /** More trials than this do not fit one figure. */
  private static final int DRAWN_UP_TO = 12;

  /** Up to this many trials have a part of their own; of more only the last. */
  static final int APART_UP_TO = 50;

  private static final List<String> NUMBERS =
      List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

  /**
   * The photos of a trial.
   *
   * @param link where its name leads
   * @param photos its photos, as many as a page can carry
   */
  record Seen(int number, String link, String name, List<PhotoFrame> photos) {}

  /**
   * The page of a comparison.
   *
   * @param comparison the trials; at least one
   */
  static ComparisonPage of(Comparison comparison, Around around) {
    List<TrialForecast> trials = comparison.trials();
    int earlier = firstApart(trials.size());
    boolean few = trials.size() <= DRAWN_UP_TO;
    boolean alone = around.addresses().isEmpty();
    double tallestPourM = PourFigure.tallestM(trials);
    return new ComparisonPage(
        comparison,
        title(trials.size()),
        trials.stream().anyMatch(trial -> trial.trial().invented()),
        DryingScale.of(trials),
        few ? List.of() : List.of(TrialList.of(trials)),
        few && trials.size() > 1 ? List.of(DryingFigure.compared(trials)) : List.of(),
        Outcomes.of(trials),
        few && trials.size() > 1 ? List.of() : trials.subList(earlier, trials.size()),
        SideBySide.of(trials, around),
        trials.size() == 1
            ? ""
            : (around.base() + 1) + " " + trials.get(around.base()).trial().name(),
        IntStream.range(earlier, trials.size())
            .mapToObj(i -> seen(i, trials.get(i).trial(), around))
            .filter(seen -> !seen.photos().isEmpty())
            .toList(),
        alone
            ? IntStream.range(earlier, trials.size())
                .mapToObj(i -> TrialView.of(i, comparison, tallestPourM))
                .toList()
            : List.of(),
        earlier,
        Cautions.of(trials));
  }

  private static Seen seen(int index, Trial trial, Around around) {
    String address = around.address(index);
    return new Seen(
        index + 1,
        address.isEmpty() ? "#" + Anchor.ofTrial(index + 1) : address,
        trial.name(),
        TrialView.photos(trial));
  }

  /**
   * Where the trials begin that have a part of their own.
   *
   * @return the place of the first, from 0
   */
  static int firstApart(int trials) {
    return Math.max(0, trials - APART_UP_TO);
  }

  private static String title(int trials) {
    String count = trials < NUMBERS.size() ? NUMBERS.get(trials) : String.valueOf(trials);
    return trials == 1 ? count + " trial" : count + " trials, side by side";
  }
}
