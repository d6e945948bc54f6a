package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.SpreadDriver;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.report.advice.Advised;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.PlainWords;

/**
 * One trial on the page; what it says of the forecast, the template asks of the words themselves.
 *
 * @param number its number among the trials
 * @param analysis the trial
 * @param tallestPourM the thickest wet spot of all trials (m), which their plates are drawn to
 * @param changes what was changed from the trial before
 * @param advice what the notebook has to say of it, if anything
 */
public record TrialView(
    int number,
    TrialAnalysis analysis,
    double tallestPourM,
    List<String> changes,
    Optional<Advised.OfTrial> advice) {
  /** The sentence where a room log was repeated. */
  static final String LOG_ENDS_EARLY =
      "The room's log ends before the film is surely dry; its last 24 hours were repeated from there on.";

  /** Drivers with a smaller share of the spread are not worth a sentence. */
  private static final double SHARE_WORTH_TELLING = 0.05;

  /** More photos of one trial than this would make the page heavy. */
  private static final int PHOTOS = 6;

  private static final int CURVE_ROWS = 14;

  /** Its forecast. */
  public TrialForecast forecast() {
    return analysis.forecast();
  }

  /** The trial's anchor on the page. */
  public String anchor() {
    return Anchor.ofTrial(number);
  }

  /** A trial by itself. */
  public static TrialView of(TrialAnalysis trial) {
    double tallestPourM = PourFigure.tallestM(List.of(trial.forecast()));
    return new TrialView(1, trial, tallestPourM, List.of(), Optional.empty());
  }

  /**
   * One trial of several.
   *
   * @param index its place among the trials, from 0
   * @param tallestPourM the thickest wet spot of all (m)
   */
  static TrialView of(int index, Comparison comparison, double tallestPourM) {
    List<TrialForecast> trials = comparison.trials();
    return new TrialView(
        index + 1,
        comparison.analyses().get(index),
        tallestPourM,
        index == 0 ? List.of() : SideBySide.changes(trials.get(index - 1), trials.get(index)),
        Optional.ofNullable(comparison.advised().after().get(index)));
  }

  /** Photos of a trial, as many as a page can carry. */
  static List<PhotoFrame> photos(Trial trial) {
    return trial.seen().photos().stream().limit(PHOTOS).map(PhotoFrame::of).toList();
  }

  /** The unknowns that widen the range, the most helpful to know first. */
  public static List<SpreadDriver> drivers(TrialForecast trial) {
    return trial.drying().spreadDrivers().stream()
        .filter(driver -> driver.share() >= SHARE_WORTH_TELLING)
        .toList();
  }

  /** Points of the curve, at even steps. */
  public List<CurvePoint> curve() {
    List<CurvePoint> points = forecast().drying().curve();
    int step = Math.max(1, (points.size() - 1) / CURVE_ROWS);
    return IntStream.range(0, points.size())
        .filter(i -> i % step == 0)
        .mapToObj(points::get)
        .toList();
  }

  /** The reading that turns a moisture of the curve into grams. */
  public CurveReading reading() {
    return new CurveReading(forecast());
  }

  /** The share of the poured water that a moisture (kg/kg) is (%). */
  public String waterLeft(double moisture) {
    return PERCENT.two(moisture / forecast().drying().startMoisture());
  }

  /** Rules used outside their range, and a room log that ended early. */
  public static List<String> extrapolations(TrialForecast trial) {
    List<Extrapolation> all = new ArrayList<>(trial.film().extrapolations());
    all.addAll(trial.drying().extrapolations());
    List<String> sentences = new ArrayList<>(PlainWords.extrapolations(all));
    if (trial.drying().logEndsEarly()) {
      sentences.add(LOG_ENDS_EARLY);
    }
    return sentences;
  }
}
