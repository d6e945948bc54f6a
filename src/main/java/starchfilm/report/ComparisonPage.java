package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.advice.NotebookAdviceView;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.chart.Strip;
import starchfilm.report.learnt.LearntView;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/**
 * Everything on a comparison page.
 *
 * @param title how many trials
 * @param invented true where some trial is made up as an example
 * @param troubles files that could not be read, trials that could not be forecast
 * @param remarks what is doubtful in the data
 * @param advice what to try next over all trials; none or one
 * @param learnt what the trials taught, folder by folder
 * @param axis ticks of the figure of waiting times
 * @param axisTitle what that axis counts
 * @param list every trial in a line, where they are many; none or one
 * @param ready when each trial is ready
 * @param table the head table
 * @param trials one by one; of very many the last
 * @param earlier how many trials stand only in the table
 * @param open true where the trials are few enough to be shown unfolded
 * @param sources what the figures rest on
 * @param safety what its trials call for
 */
record ComparisonPage(
    String title,
    boolean invented,
    List<String> troubles,
    List<String> remarks,
    List<NotebookAdviceView> advice,
    List<LearntView> learnt,
    List<Strip.Grid> axis,
    String axisTitle,
    List<TrialList> list,
    List<Ready> ready,
    SideBySide table,
    List<TrialView> trials,
    int earlier,
    boolean open,
    SourceList sources,
    List<Caution> safety) {
  /** With more trials than this, each is folded until asked for. */
  private static final int OPEN_UP_TO = 12;

  /** Of more trials than this only the last have a part of their own. */
  private static final int APART_UP_TO = 50;

  private static final List<String> NUMBER_WORDS =
      List.of(
          "No trials",
          "One trial",
          "Two trials",
          "Three trials",
          "Four trials",
          "Five trials",
          "Six trials",
          "Seven trials",
          "Eight trials",
          "Nine trials",
          "Ten trials");

  /**
   * When a trial is ready.
   *
   * @param number its number on this page
   * @param anchor its place on this page
   * @param name what its maker calls it
   * @param poured when it was poured
   * @param strip both moments on the axis
   * @param peelable the first, in words
   * @param dry the second, in words
   * @param atThePour the second as forecast at the pour, where it was weighed since; else empty
   */
  record Ready(
      int number,
      String anchor,
      String name,
      String poured,
      Strip strip,
      String peelable,
      String dry,
      String atThePour) {}

  /**
   * The trials that have photos.
   *
   * @return views in order
   */
  public List<TrialView> photographed() {
    return trials.stream().filter(trial -> !trial.photos().isEmpty()).toList();
  }

  /**
   * The page of a comparison.
   *
   * @param comparison the trials; at least one
   * @return its view
   */
  static ComparisonPage of(Comparison comparison) {
    List<TrialForecast> trials = comparison.trials();
    int earlier = firstApart(trials.size());
    DryingScale scale = DryingScale.of(trials);
    double tallestPourM = PourFigure.tallestM(trials);
    return new ComparisonPage(
        title(trials.size()),
        trials.stream().anyMatch(trial -> trial.trial().invented()),
        comparison.troubles(),
        comparison.remarks(),
        NotebookAdviceView.of(comparison.advised(), trials),
        LearntView.of(comparison.learnt(), trials),
        scale.axis(),
        scale.axisTitle(),
        trials.size() > OPEN_UP_TO ? List.of(TrialList.of(trials)) : List.of(),
        ready(trials, scale),
        SideBySide.of(trials),
        IntStream.range(earlier, trials.size())
            .mapToObj(i -> TrialView.of(i, comparison, tallestPourM))
            .toList(),
        earlier,
        trials.size() <= OPEN_UP_TO,
        SourceList.of(comparison),
        Cautions.of(trials));
  }

  /**
   * Where the trials begin that have a part of their own.
   *
   * @param trials how many are compared
   * @return the place of the first, from 0
   */
  static int firstApart(int trials) {
    return Math.max(0, trials - APART_UP_TO);
  }

  private static String title(int trials) {
    String count = trials < NUMBER_WORDS.size() ? NUMBER_WORDS.get(trials) : trials + " trials";
    return trials == 1 ? count : count + ", side by side";
  }

  private static List<Ready> ready(List<TrialForecast> trials, DryingScale scale) {
    List<Ready> rows = new ArrayList<>();
    for (int i = firstApart(trials.size()); i < trials.size(); i++) {
      TrialForecast trial = trials.get(i);
      PourCalendar calendar = new PourCalendar(trial.trial().pouredAt());
      rows.add(
          new Ready(
              i + 1,
              Anchor.ofTrial(i + 1),
              trial.trial().name(),
              calendar.pour(),
              scale.strip(trial),
              Spans.of(DryingScale.peelable(trial)),
              Spans.of(DryingScale.dryThrough(trial)),
              trial.weighed().takenIn() == 0
                  ? ""
                  : Spans.of(DryingScale.dryThrough(trial.dryingAtThePour()))));
    }
    return rows;
  }
}
