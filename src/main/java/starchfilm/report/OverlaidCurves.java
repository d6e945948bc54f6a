package starchfilm.report;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.Milestone;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.CurveFigure.Frame;
import starchfilm.report.chart.CurveFigure.Lane;
import starchfilm.report.chart.CurveFigure.LaneMark;
import starchfilm.report.chart.CurveFigure.LaneRange;
import starchfilm.report.chart.CurveFigure.Line;
import starchfilm.report.chart.CurveFigure.TickMark;
import starchfilm.report.chart.CurveFigure.Upright;
import starchfilm.report.chart.RoundTicks;
import starchfilm.report.chart.Scale;

/**
 * Drying curves of several castings on one time axis, and below it when each can be peeled and is
 * dry through.
 *
 * <p>The left axis is the share of the poured water that is still in the film, so that all curves
 * begin together.
 */
final class OverlaidCurves {
  private static final int LANE_STEP = 28;
  private static final int TICKS = 9;

  /** The axis of what is moved about is this many times as long as the unmoved plate takes. */
  private static final double ROOM_TO_MOVE = 3;

  private static final double[] ROUND_DAYS = {0.25, 0.5, 1, 2, 3, 5, 7, 10, 14, 21, 30, 60, 120};

  /** Where the slowest waits this many times longer than the quickest, equal steps are ratios. */
  private static final double LOGARITHMIC_FROM = 8;

  private final Frame frame;
  private final Scale time;
  private final double unitS;
  private final Scale water;
  private final List<Line> lines = new ArrayList<>();
  private final List<Lane> lanes = new ArrayList<>();
  private final List<Upright> uprights = new ArrayList<>();

  private OverlaidCurves(Frame frame, double startS, double endS) {
    this.frame = frame;
    this.unitS = endS < 2 * DAY_S ? HOUR_S : DAY_S;
    this.time =
        startS > 0
            ? Scale.logarithmic(startS / unitS, endS / unitS, frame.left(), frame.right())
            : Scale.linear(0, endS / unitS, frame.left(), frame.right());
    this.water = Scale.linear(0, 100, frame.bottom(), frame.top());
  }

  /**
   * A casting that is moved about, over what it was. The axis is the unmoved casting's and stays.
   *
   * @param byS when it must be ready (s since the pour), if there is such a day
   */
  static CurveFigure moved(TrialForecast moved, TrialForecast unmoved, OptionalDouble byS) {
    double wanted = Math.max(ROOM_TO_MOVE * settled(unmoved), 1.05 * byS.orElse(0));
    double end =
        DAY_S
            * DoubleStream.of(ROUND_DAYS)
                .filter(days -> days * DAY_S >= wanted)
                .findFirst()
                .orElse(ROUND_DAYS[ROUND_DAYS.length - 1]);
    OverlaidCurves curves = new OverlaidCurves(new Frame(100, 30, 548, 270, 560), 0, end);
    curves.line("ghost", unmoved, point -> point.nominal().middle());
    curves.line("thin", moved, CurvePoint::thinEdge);
    curves.line("thick", moved, CurvePoint::thickSpot);
    curves.line("nominal", moved, point -> point.nominal().middle());
    curves.lane("before", unmoved, "ghost");
    curves.lane("now", moved, "");
    byS.ifPresent(
        s -> curves.uprights.add(new Upright(curves.time.place(s / curves.unitS), "needed")));
    return curves.figure(
        "Drying curve", Headline.of(moved) + " Before it was moved: " + Headline.of(unmoved));
  }

  /**
   * Trials beside one another.
   *
   * @param trials the trials; at least one
   */
  static CurveFigure compared(List<TrialForecast> trials) {
    double last = trials.stream().mapToDouble(OverlaidCurves::settled).max().orElse(DAY_S);
    double first =
        trials.stream()
            .mapToDouble(trial -> DryingScale.peelable(trial).low())
            .filter(s -> s > 0 && Double.isFinite(s))
            .min()
            .orElse(last);
    boolean ratios = last > LOGARITHMIC_FROM * first;
    Frame frame = new Frame(190, 30, 728, 250, 740);
    OverlaidCurves curves =
        new OverlaidCurves(frame, ratios ? Math.max(HOUR_S / 2, first / 4) : 0, 1.08 * last);
    for (int i = 0; i < trials.size(); i++) {
      curves.line(kind(i), trials.get(i), point -> point.nominal().middle());
    }
    for (int i = 0; i < trials.size(); i++) {
      curves.lane((i + 1) + " " + shortened(trials.get(i).trial().name()), trials.get(i), kind(i));
    }
    return curves.figure(
        "Drying curves",
        IntStream.range(0, trials.size())
            .mapToObj(i -> trials.get(i).trial().name() + ": " + Headline.of(trials.get(i)))
            .reduce("", (a, b) -> (a + " " + b).strip()));
  }

  /** The look of the trial in this place. */
  static String kind(int index) {
    return "of-" + (index % 6 + 1);
  }

  private static String shortened(String name) {
    return name.length() > 22 ? name.substring(0, 21).strip() + "…" : name;
  }

  /** When all is over that is ever over (s). */
  private static double settled(TrialForecast trial) {
    Band dry = DryingScale.dryThrough(trial);
    Band peelable = DryingScale.peelable(trial);
    return DoubleStream.of(
            peelable.low(), peelable.middle(), peelable.high(), dry.low(), dry.middle(), dry.high())
        .filter(Double::isFinite)
        .max()
        .orElseGet(
            () -> {
              List<CurvePoint> curve = trial.drying().curve();
              return curve.get(curve.size() - 1).timeS();
            });
  }

  private void line(String kind, TrialForecast trial, ToDoubleFunction<CurvePoint> moisture) {
    double start = trial.drying().startMoisture();
    List<double[]> points = new ArrayList<>();
    for (CurvePoint point : trial.drying().curve()) {
      points.add(new double[] {point.timeS() / unitS, 100 * moisture.applyAsDouble(point) / start});
    }
    lines.add(new Line(kind, CurveFigure.corners(time, water, within(points))));
  }

  /** Cut where the axis ends and begins, and held where the curve ends before it. */
  private List<double[]> within(List<double[]> points) {
    List<double[]> kept = new ArrayList<>();
    double[] before = points.get(0);
    for (double[] point : points) {
      if (point[0] > time.to()) {
        kept.add(between(before, point, time.to()));
        return kept;
      }
      if (point[0] >= time.from()) {
        if (kept.isEmpty() && point[0] > time.from()) {
          kept.add(between(before, point, time.from()));
        }
        kept.add(point);
      }
      before = point;
    }
    kept.add(new double[] {time.to(), before[1]});
    return kept;
  }

  private static double[] between(double[] before, double[] after, double at) {
    double share = after[0] > before[0] ? (at - before[0]) / (after[0] - before[0]) : 0;
    return new double[] {at, before[1] + share * (after[1] - before[1])};
  }

  private void lane(String label, TrialForecast trial, String look) {
    List<LaneRange> ranges = new ArrayList<>();
    List<LaneMark> marks = new ArrayList<>();
    for (Milestone milestone : List.of(Milestone.PEELABLE, Milestone.DRY_THROUGH)) {
      boolean peelable = milestone == Milestone.PEELABLE;
      Band band = peelable ? DryingScale.peelable(trial) : DryingScale.dryThrough(trial);
      String kind = (peelable ? "peelable " : "dry ") + look;
      if (band.low() / unitS <= time.to()) {
        ranges.add(
            new LaneRange(
                kind.strip(),
                time.place(band.low() / unitS),
                time.place(band.high() / unitS),
                band.high() / unitS > time.to()));
      }
      if (band.middle() / unitS <= time.to()) {
        marks.add(
            new LaneMark(peelable ? "peelable" : kind.strip(), time.place(band.middle() / unitS)));
      }
    }
    lanes.add(new Lane(label, look, frame.bottom() + 72 + LANE_STEP * lanes.size(), ranges, marks));
  }

  private CurveFigure figure(String title, String description) {
    return new CurveFigure(
        title,
        description,
        frame,
        frame.bottom() + 72 + LANE_STEP * lanes.size(),
        "water still in the film, %",
        "",
        (unitS == DAY_S ? "days" : "hours")
            + " since the pour"
            + (time.logarithmic() ? "; equal steps are equal ratios" : ""),
        RoundTicks.linear(0, 100, 6).stream()
            .map(tick -> new TickMark(water.place(tick.value()), tick.label(), "", false))
            .toList(),
        List.of(),
        ticks(),
        "",
        "",
        lines,
        List.of(),
        lanes,
        uprights);
  }

  private List<TickMark> ticks() {
    List<TickMark> ticks = new ArrayList<>();
    for (RoundTicks.Tick tick :
        time.logarithmic()
            ? RoundTicks.logarithmic(time.from(), time.to(), TICKS)
            : RoundTicks.linear(0, time.to(), TICKS)) {
      ticks.add(new TickMark(time.place(tick.value()), tick.label(), "", ticks.size() % 2 == 1));
    }
    return ticks;
  }
}
