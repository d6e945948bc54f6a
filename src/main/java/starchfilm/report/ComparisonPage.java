package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.Scatter;
import starchfilm.report.chart.Strip;
import starchfilm.report.learnt.LearntView;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.Glossary;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/**
 * Everything on a comparison page.
 *
 * @param invented true where some trial is made up as an example
 * @param learnt what the trials taught, folder by folder
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
    List<LearntView> learnt,
    Axis axis,
    List<TrialList> list,
    List<CurveFigure> curves,
    List<Scatter> outcomes,
    List<Ready> ready,
    SideBySide table,
    String against,
    List<Seen> photographed,
    List<TrialView> trials,
    int count,
    int earlier,
    SourceList sources,
    List<Caution> safety) {
  /** More trials than this do not fit one figure. */
  private static final int DRAWN_UP_TO = 12;

  /** Of more trials than this only the last have a part of their own. */
  private static final int APART_UP_TO = 50;

  private static final List<String> NUMBERS =
      List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

  /**
   * When a trial is ready.
   *
   * @param poured when it was poured
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
   * The photos of a trial.
   *
   * @param link where its name leads
   * @param photos its photos, as many as a page can carry
   */
  record Seen(int number, String link, String name, List<PhotoFrame> photos) {}

  /**
   * The words of the page that need explaining.
   *
   * @return as the glossary has them
   */
  public List<Glossary.Entry> words() {
    return Stream.of(
            "wet thickness",
            "thin edge",
            "thick spot",
            "peelable",
            "dry through",
            "plasticiser",
            "glass transition",
            "forecast at the pour",
            "textbook")
        .map(Glossary::entry)
        .toList();
  }

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
    DryingScale scale = DryingScale.of(trials);
    double tallestPourM = PourFigure.tallestM(trials);
    return new ComparisonPage(
        comparison,
        title(trials.size()),
        trials.stream().anyMatch(trial -> trial.trial().invented()),
        LearntView.of(comparison.learnt(), trials),
        scale.axis(),
        few ? List.of() : List.of(TrialList.of(trials)),
        few && trials.size() > 1 ? List.of(DryingFigure.compared(trials)) : List.of(),
        Outcomes.of(trials),
        few && trials.size() > 1 ? List.of() : ready(trials, scale),
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
        trials.size(),
        earlier,
        SourceList.of(comparison),
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
              Spans.of(trial.drying().peelableS()),
              Spans.of(trial.drying().dryThroughS()),
              trial.weighed().takenIn() == 0
                  ? ""
                  : Spans.of(trial.dryingAtThePour().dryThroughS())));
    }
    return rows;
  }
}
