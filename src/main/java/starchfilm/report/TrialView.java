package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.drying.SpreadDriver;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.Oddity;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.report.advice.Advised;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.Figures;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.Spans;

/**
 * One trial on the page.
 *
 * @param invented true where it is made up as an example
 * @param odd what is odd about its recipe, each with the way out
 * @param takenIn what its own weighings did to the drying forecast; may be empty
 * @param questions what is odd about its weighings, each with the question to answer
 * @param milestones when each milestone comes
 * @param risks how its plates may fail
 * @param pullNote what to mind about its pull tests; may be empty
 * @param advice what the notebook has to say of it, if anything
 * @param photos its photos, as many as a page can carry
 * @param extrapolations rules used outside their range, and a room log that ended early
 */
record TrialView(
    int number,
    String anchor,
    String name,
    String file,
    boolean invented,
    PourCalendar calendar,
    List<String> odd,
    String headline,
    String takenIn,
    List<String> questions,
    List<String> changes,
    WeighOut weighOut,
    PourFigure pour,
    CurveFigure figure,
    List<CurveRow> curve,
    MilestoneTable milestones,
    List<RiskTable.Row> risks,
    FilmTable film,
    Happened happened,
    String pullNote,
    Optional<Advised.OfTrial> advice,
    List<PhotoFrame> photos,
    List<Sharpen> sharpen,
    LeverTable levers,
    List<NotRecorded> notRecorded,
    List<Caution> safety,
    List<String> extrapolations) {
  /** What is said where a room log was repeated. */
  static final String LOG_ENDS_EARLY =
      "The room's log ends before the film is dry; its last 24 hours were repeated from there on.";

  /** Drivers with a smaller share of the spread are not worth a sentence. */
  private static final double SHARE_WORTH_TELLING = 0.05;

  /** More photos of one trial than this would make the page heavy. */
  private static final int PHOTOS = 6;

  private static final int CURVE_ROWS = 14;

  /** How a question names the command that answers it. */
  private static final Pattern CONFIRM = Pattern.compile("--confirm ([0-9.]+h)");

  /**
   * What would narrow the range.
   *
   * @param width the same, as a bar
   */
  record Sharpen(String share, String width, String what, String how) {}

  /**
   * A row of the curve's numbers.
   *
   * @param grams film on the plate (g), with its range
   * @param thin water left at the thin edge (%)
   * @param nominal water left on average (%)
   * @param thick water left at the thick spot (%)
   */
  record CurveRow(String time, String grams, String thin, String nominal, String thick) {}

  /** Times of weighings that are asked about and count once somebody says that they are right. */
  public List<String> confirmable() {
    return questions.stream()
        .flatMap(question -> CONFIRM.matcher(question).results())
        .map(found -> found.group(1))
        .distinct()
        .toList();
  }

  /** A trial by itself. */
  static TrialView of(TrialAnalysis trial) {
    Comparison alone = new Comparison(List.of(trial), List.of(), List.of());
    return of(0, alone, PourFigure.tallestM(alone.trials()));
  }

  /**
   * One trial of several.
   *
   * @param index its place among the trials, from 0
   * @param tallestPourM the thickest wet spot of all (m)
   */
  static TrialView of(int index, Comparison comparison, double tallestPourM) {
    List<TrialForecast> trials = comparison.trials();
    TrialAnalysis analysis = comparison.analyses().get(index);
    TrialForecast trial = analysis.forecast();
    return new TrialView(
        index + 1,
        Anchor.ofTrial(index + 1),
        trial.trial().name(),
        String.valueOf(trial.trial().file().getFileName()),
        trial.trial().invented(),
        PourCalendar.of(trial.trial()),
        OddityWords.of(Oddity.of(trial.trial())),
        Headline.of(trial),
        Headline.takenIn(trial),
        trial.weighed().questions(),
        index == 0 ? List.of() : SideBySide.changes(trials.get(index - 1), trial),
        WeighOut.of(trial),
        PourFigure.of(trial, tallestPourM),
        DryingFigure.of(trial, OptionalDouble.empty()),
        curve(trial),
        MilestoneTable.of(trial),
        RiskTable.of(analysis),
        FilmTable.of(trial),
        Happened.of(trial),
        Measured.pullNote(trial.trial()),
        Optional.ofNullable(comparison.advised().after().get(index)),
        photos(trial.trial()),
        sharpen(trial),
        LeverTable.of(analysis),
        trial.trial().notRecorded(),
        Cautions.of(trial),
        extrapolations(trial));
  }

  /** Photos of a trial, as many as a page can carry. */
  static List<PhotoFrame> photos(Trial trial) {
    return trial.seen().photos().stream().limit(PHOTOS).map(PhotoFrame::of).toList();
  }

  private static List<Sharpen> sharpen(TrialForecast trial) {
    return trial.drying().spreadDrivers().stream()
        .filter(driver -> driver.share() >= SHARE_WORTH_TELLING)
        .map(TrialView::sharpen)
        .toList();
  }

  private static Sharpen sharpen(SpreadDriver driver) {
    String percent = Figures.whole(100 * driver.share()) + " %";
    return new Sharpen(
        percent,
        percent.replace(" ", ""),
        PlainWords.word(driver.factor()),
        PlainWords.word(driver.factor(), "to know it better"));
  }

  private static List<CurveRow> curve(TrialForecast trial) {
    CurveReading reading = new CurveReading(trial);
    PourCalendar calendar = PourCalendar.of(trial.trial());
    var points = trial.drying().curve();
    double start = trial.drying().startMoisture();
    List<CurveRow> rows = new ArrayList<>();
    int step = Math.max(1, (points.size() - 1) / CURVE_ROWS);
    for (int i = 0; i < points.size(); i += step) {
      var point = points.get(i);
      rows.add(
          new CurveRow(
              calendar.moment(point.timeS()) + " (" + Spans.of(point.timeS()) + ")",
              ReaderUnit.GRAM.two(reading.massKg(point.nominal().middle()))
                  + " ("
                  + Figures.range(
                      ReaderUnit.GRAM.two(reading.massKg(point.nominal().low())),
                      ReaderUnit.GRAM.two(reading.massKg(point.nominal().high())))
                  + ")",
              Figures.two(100 * point.thinEdge() / start),
              Figures.two(100 * point.nominal().middle() / start),
              Figures.two(100 * point.thickSpot() / start)));
    }
    return rows;
  }

  private static List<String> extrapolations(TrialForecast trial) {
    List<Extrapolation> all = new ArrayList<>(trial.film().extrapolations());
    all.addAll(trial.drying().extrapolations());
    List<String> sentences = PlainWords.extrapolations(all);
    if (!trial.drying().logEndsEarly()) {
      return sentences;
    }
    List<String> withLog = new ArrayList<>(sentences);
    withLog.add(LOG_ENDS_EARLY);
    return withLog;
  }
}
