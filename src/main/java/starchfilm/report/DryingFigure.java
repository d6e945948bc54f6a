package starchfilm.report;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.Milestone;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.CurveFigure.Frame;
import starchfilm.report.chart.CurveFigure.Lane;
import starchfilm.report.chart.CurveFigure.LaneMark;
import starchfilm.report.chart.CurveFigure.LaneRange;
import starchfilm.report.chart.CurveFigure.Line;
import starchfilm.report.chart.CurveFigure.Mark;
import starchfilm.report.chart.CurveFigure.TickMark;
import starchfilm.report.chart.RoundTicks;
import starchfilm.report.chart.Scale;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.ReaderUnit;

/**
 * The drying curve of a trial.
 *
 * <p>The left axis is the share of the poured water that is still in the film, so that thin edge,
 * average and thick spot begin together; the right axis is what the scale shows for the average.
 */
public final class DryingFigure {
  private static final Frame FRAME = new Frame(100, 44, 508, 270, 560);
  private static final int FIRST_LANE = 364;
  private static final int LANE_STEP = 30;
  private static final int HEIGHT = 440;
  private static final int MOST_TICKS = 9;
  private static final int READ_OUTS = 36;

  /** Shorter axes count hours (s). */
  private static final double HOURS_UP_TO_S = 2.5 * DAY_S;

  private final TrialForecast trial;
  private final CurveReading reading;
  private final double unitS;
  private final Scale time;
  private final Scale water = Scale.linear(0, 100, FRAME.bottom(), FRAME.top());
  private final OptionalDouble nowS;

  private DryingFigure(TrialForecast trial, OptionalDouble nowS) {
    this.trial = trial;
    this.nowS = nowS;
    this.reading = new CurveReading(trial);
    double end = Math.max(endS(trial), 1.05 * nowS.orElse(0));
    this.unitS = end <= HOURS_UP_TO_S ? HOUR_S : DAY_S;
    this.time = Scale.linear(0, end / unitS, FRAME.left(), FRAME.right());
  }

  /** Draws a trial's curve. */
  public static CurveFigure of(TrialForecast trial) {
    return new DryingFigure(trial, OptionalDouble.empty()).figure();
  }

  /**
   * Draws a plate's curve with now on it.
   *
   * @param trial the trial
   * @param nowS now (s since the pour)
   * @return the figure
   */
  public static CurveFigure of(TrialForecast trial, double nowS) {
    return new DryingFigure(trial, OptionalDouble.of(nowS)).figure();
  }

  /**
   * What the curve says at even steps along its axis.
   *
   * @param trial the trial
   * @param nowS now (s since the pour), where it is on the axis
   * @param emptyKg the empty plate (kg), if weighed
   * @return a line a step
   */
  public static List<String> readOuts(
      TrialForecast trial, OptionalDouble nowS, OptionalDouble emptyKg) {
    DryingFigure drawn = new DryingFigure(trial, nowS);
    PourCalendar calendar = new PourCalendar(trial.trial().pouredAt());
    List<String> readOuts = new ArrayList<>();
    for (int i = 0; i < READ_OUTS; i++) {
      double timeS = drawn.time.to() * drawn.unitS * (i + 0.5) / READ_OUTS;
      Band moisture = drawn.reading.moistureAt(timeS);
      readOuts.add(
          calendar.byTheHour(timeS)
              + ": "
              + Figures.whole(
                  ReaderUnit.GRAM.of(emptyKg.orElse(0) + drawn.reading.massKg(moisture.middle())))
              + (emptyKg.isPresent() ? " g on the scale, " : " g of film, ")
              + Figures.whole(drawn.percent(moisture.middle()))
              + " % of the water left");
    }
    return readOuts;
  }

  private CurveFigure figure() {
    return new CurveFigure(
        "Drying curve",
        Headline.of(trial)
            + " The shaded band holds 8 of 10 likely cases of the average thickness; the thin edge"
            + " dries sooner, the thick spot later.",
        FRAME,
        HEIGHT,
        "water still in the film, %",
        "on the plate, g",
        trial.trial().pouredAt().isPresent()
            ? "by the clock; poured " + new PourCalendar(trial.trial().pouredAt()).pour()
            : unitS == HOUR_S ? "hours since the pour" : "days since the pour",
        leftTicks(),
        rightTicks(),
        timeTicks(),
        trial.weighed().takenIn() == 0 ? "" : band(trial.dryingAtThePour().curve()),
        band(trial.drying().curve()),
        List.of(
            line("thin", CurvePoint::thinEdge),
            line("thick", CurvePoint::thickSpot),
            line("nominal", point -> point.nominal().middle())),
        marks(),
        lanes(),
        nowS.isPresent()
            ? List.of(new CurveFigure.Upright(time.place(nowS.getAsDouble() / unitS), "now"))
            : List.of());
  }

  /** The axis ends a little past the last finite milestone or weighing, or with the curve. */
  private static double endS(TrialForecast trial) {
    double last = 0;
    for (Spot spot : Spot.values()) {
      for (Milestone milestone : Milestone.values()) {
        Band band = trial.drying().at(spot).at(milestone).timeS();
        for (double moment : new double[] {band.low(), band.middle(), band.high()}) {
          last = Double.isFinite(moment) ? Math.max(last, moment) : last;
        }
      }
    }
    for (Weighing weighing : trial.trial().seen().weighings()) {
      last = Math.max(last, weighing.timeS());
    }
    List<CurvePoint> curve = trial.drying().curve();
    return last > 0 ? 1.05 * last : curve.get(curve.size() - 1).timeS();
  }

  private double percent(double moisture) {
    return 100 * moisture / trial.drying().startMoisture();
  }

  private Line line(String kind, ToDoubleFunction<CurvePoint> moisture) {
    List<double[]> points = new ArrayList<>();
    for (CurvePoint point : drawn(trial.drying().curve())) {
      points.add(new double[] {point.timeS() / unitS, percent(moisture.applyAsDouble(point))});
    }
    return new Line(kind, CurveFigure.corners(time, water, points));
  }

  private String band(List<CurvePoint> curve) {
    List<double[]> corners = new ArrayList<>();
    List<CurvePoint> drawn = drawn(curve);
    for (CurvePoint point : drawn) {
      corners.add(new double[] {point.timeS() / unitS, percent(point.nominal().high())});
    }
    for (int i = drawn.size() - 1; i >= 0; i--) {
      corners.add(
          new double[] {drawn.get(i).timeS() / unitS, percent(drawn.get(i).nominal().low())});
    }
    return CurveFigure.corners(time, water, corners);
  }

  private List<CurvePoint> drawn(List<CurvePoint> curve) {
    return curve.stream().filter(point -> point.timeS() / unitS <= time.to()).toList();
  }

  private List<TickMark> leftTicks() {
    return RoundTicks.linear(0, 100, 6).stream()
        .map(tick -> new TickMark(water.place(tick.value()), tick.label(), "", false))
        .toList();
  }

  /** Grams are a straight function of the water left, so one drawing serves both axes. */
  private List<TickMark> rightTicks() {
    double dry = ReaderUnit.GRAM.of(reading.massKg(0));
    double wet = ReaderUnit.GRAM.of(reading.massKg(trial.drying().startMoisture()));
    return RoundTicks.linear(dry, wet, 6).stream()
        .map(
            tick ->
                new TickMark(
                    water.place(100 * (tick.value() - dry) / (wet - dry)), tick.label(), "", false))
        .toList();
  }

  private List<TickMark> timeTicks() {
    PourCalendar calendar = new PourCalendar(trial.trial().pouredAt());
    List<PourCalendar.ClockTick> clock = calendar.clockTicks(time.to() * unitS, MOST_TICKS);
    List<TickMark> marks = new ArrayList<>();
    if (!clock.isEmpty()) {
      // On a narrow screen the day of the pour would run into the next.
      boolean crowded = clock.size() > 1 && !clock.get(1).under().isEmpty();
      for (PourCalendar.ClockTick tick : clock) {
        marks.add(
            new TickMark(
                time.place(tick.afterPourS() / unitS),
                tick.label(),
                tick.under(),
                tick.label().contains(":")
                    ? tick.under().isEmpty() || (crowded && marks.isEmpty())
                    : marks.size() % 2 == 1));
      }
      return marks;
    }
    for (RoundTicks.Tick tick : RoundTicks.linear(0, time.to(), MOST_TICKS)) {
      marks.add(new TickMark(time.place(tick.value()), tick.label(), "", marks.size() % 2 == 1));
    }
    return marks;
  }

  private List<Mark> marks() {
    return trial.trial().seen().weighings().stream()
        .filter(Weighing::tared)
        .map(
            weighing ->
                new Mark(
                    time.place(weighing.timeS() / unitS),
                    water.place(percent(reading.moisture(weighing.filmMassKg()))),
                    "weighed "
                        + ReaderUnit.GRAM.noted(weighing.filmMassKg())
                        + " after "
                        + Figures.noted(weighing.timeS() / unitS)
                        + (unitS == HOUR_S ? " hours" : " days")))
        .toList();
  }

  private List<Lane> lanes() {
    List<Lane> lanes = new ArrayList<>();
    for (Spot spot : Spot.values()) {
      List<LaneRange> ranges = new ArrayList<>();
      List<LaneMark> marks = new ArrayList<>();
      for (Milestone milestone : List.of(Milestone.PEELABLE, Milestone.DRY_THROUGH)) {
        Band band = trial.drying().at(spot).at(milestone).timeS();
        String kind = milestone == Milestone.PEELABLE ? "peelable" : "dry";
        if (Double.isFinite(band.low())) {
          ranges.add(
              new LaneRange(
                  kind,
                  time.place(band.low() / unitS),
                  time.place(band.high() / unitS),
                  Double.isInfinite(band.high())));
        }
        if (Double.isFinite(band.middle())) {
          marks.add(new LaneMark(kind, time.place(band.middle() / unitS)));
        }
      }
      lanes.add(
          new Lane(
              PlainWords.word(spot), "", FIRST_LANE + LANE_STEP * lanes.size(), ranges, marks));
    }
    return lanes;
  }
}
