package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.Milestone;
import starchfilm.drying.SpotForecast;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.CurveFigure.Frame;
import starchfilm.report.chart.CurveFigure.Line;
import starchfilm.report.chart.CurveFigure.MeasuredPoint;
import starchfilm.report.chart.CurveFigure.Upright;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.TimeScale;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;

/**
 * Drying curves on one time axis, and below it when each spot or plate can be peeled and is dry
 * through.
 *
 * <p>The left axis is the share of the poured water that is still in the film, so that all curves
 * begin together; the right axis is what the scale shows for the average of a plate alone.
 */
public final class DryingFigure {
  /** Lines that the style sheet tells apart. */
  private static final int LOOKS = 12;

  private static final int FIRST_LANE = 84;
  private static final int LANE_STEP = 24;
  private static final int MOST_TICKS = 9;
  private static final int READ_OUTS = 36;

  /** The axis of what is moved about is this many times as long as the unmoved plate takes. */
  private static final double ROOM_TO_MOVE = 3;

  /** A now later than this many times the course is left out of the drawing (ratio; judged). */
  private static final double LONG_PAST = 3;

  private static final double[] ROUND_DAYS = {0.25, 0.5, 1, 2, 3, 5, 7, 10, 14, 21, 30, 60, 120};

  private final Frame frame;
  private final TimeScale time;
  private final Scale water;
  private final List<Line> lines = new ArrayList<>();
  private final List<Lane> lanes = new ArrayList<>();
  private final List<Upright> uprights = new ArrayList<>();

  private DryingFigure(Frame frame, double startS, double endS) {
    this.frame = frame;
    this.time = TimeScale.of(startS, endS, frame.left(), frame.right());
    this.water = Scale.linear(0, 100, frame.bottom(), frame.top());
  }

  /**
   * Draws a plate's curve.
   *
   * @param trial the trial
   * @param nowS now (s since the pour), where it is on the axis
   * @return the figure
   */
  public static CurveFigure of(TrialForecast trial, OptionalDouble nowS) {
    DryingFigure drawn = alone(trial, nowS);
    drawn.spots(trial);
    for (Spot spot : Spot.values()) {
      SpotForecast at = trial.drying().at(spot);
      drawn.lane(PlainWords.word(spot), "", "", milestone -> at.at(milestone).timeS());
    }
    nowS.stream().filter(at -> at <= drawn.time.endS()).forEach(at -> drawn.upright(at, "now"));
    CurveReading reading = new CurveReading(trial);
    double start = trial.drying().startMoisture();
    Scale grams =
        Scale.linear(
            GRAM.of(reading.massKg(0)),
            GRAM.of(reading.massKg(start)),
            drawn.frame.bottom(),
            drawn.frame.top());
    return drawn.figure(
        "Drying curve",
        Headline.of(trial)
            + " The shaded band holds 8 of 10 likely cases of the average thickness; the thin edge"
            + " dries sooner, the thick spot later.",
        Axis.of("on the plate, g", grams, 6),
        drawn.clock(PourCalendar.of(trial.trial())),
        trial.weighed().takenIn() == 0
            ? ""
            : drawn.band(CurveReading.atThePour(trial), trial.dryingAtThePour()),
        drawn.band(reading, trial.drying()),
        trial.seen().weighings().stream()
            .filter(Weighing::tared)
            .map(
                weighing ->
                    drawn.weighed(weighing, reading.moisture(weighing.filmMassKg()) / start))
            .toList());
  }

  /**
   * Draws a plate's curve, whenever that is.
   *
   * @param trial the trial
   * @return the figure
   */
  public static CurveFigure of(TrialForecast trial) {
    return of(trial, OptionalDouble.empty());
  }

  /**
   * The readings of the curve at even steps along its axis.
   *
   * @param trial the trial
   * @param nowS now (s since the pour), where it is on the axis
   * @param emptyKg the empty plate (kg), if weighed
   * @return a line a step
   */
  public static List<String> readOuts(
      TrialForecast trial, OptionalDouble nowS, OptionalDouble emptyKg) {
    double endS = alone(trial, nowS).time.endS();
    CurveReading reading = new CurveReading(trial);
    PourCalendar calendar = PourCalendar.of(trial.trial());
    List<String> readOuts = new ArrayList<>();
    for (int i = 0; i < READ_OUTS; i++) {
      double timeS = endS * (i + 0.5) / READ_OUTS;
      double moisture = reading.moistureAt(timeS).middle();
      readOuts.add(
          "%s: %s g %s, %s %% of the water left"
              .formatted(
                  calendar.byTheHour(timeS),
                  Figures.whole(GRAM.of(emptyKg.orElse(0) + reading.massKg(moisture))),
                  emptyKg.isPresent() ? "on the scale" : "of film",
                  Figures.whole(100 * moisture / trial.drying().startMoisture())));
    }
    return readOuts;
  }

  /**
   * Draws a casting over what it was before it was moved about. The axis follows the unmoved one
   * alone, so that it stands still while the other moves.
   *
   * @param moved the casting
   * @param unmoved what it was
   * @param byS when it must be ready (s since the pour), if there is such a day
   * @return the figure
   */
  public static CurveFigure moved(TrialForecast moved, TrialForecast unmoved, OptionalDouble byS) {
    double wanted = Math.max(ROOM_TO_MOVE * settledS(unmoved), 1.05 * byS.orElse(0));
    double endDays =
        DoubleStream.of(ROUND_DAYS)
            .filter(days -> days * DAY_S >= wanted)
            .findFirst()
            .orElse(ROUND_DAYS[ROUND_DAYS.length - 1]);
    DryingFigure drawn = new DryingFigure(new Frame(100, 30, 548, 270, 560), 0, DAY_S * endDays);
    drawn.average("ghost", unmoved);
    drawn.spots(moved);
    drawn.lane("before", "", "ghost", unmoved.drying()::timeS);
    drawn.lane("now", "", "", moved.drying()::timeS);
    byS.ifPresent(at -> drawn.upright(at, "needed"));
    return drawn.figure(
        "Drying curve", Headline.of(moved) + " Before it was moved: " + Headline.of(unmoved));
  }

  /** Draws the average of every trial. */
  static CurveFigure compared(List<TrialForecast> trials) {
    double last = trials.stream().mapToDouble(DryingFigure::settledS).max().orElse(DAY_S);
    double first =
        trials.stream()
            .mapToDouble(trial -> trial.drying().peelableS().low())
            .filter(s -> s > 0 && Double.isFinite(s))
            .min()
            .orElse(last);
    double startS = TimeScale.isWide(first, last) ? Math.max(HOUR_S / 2, first / 4) : 0;
    DryingFigure drawn = new DryingFigure(new Frame(60, 30, 688, 172, 700), startS, 1.08 * last);
    for (int i = 0; i < trials.size(); i++) {
      String look = "of-" + (i % LOOKS + 1);
      drawn.average(look, trials.get(i));
      String number = String.valueOf(i + 1);
      String name = number + " " + trials.get(i).trial().name();
      drawn.lane(number, name, look, trials.get(i).drying()::timeS);
    }
    return drawn.figure(
        "Drying curves",
        trials.stream()
            .map(trial -> trial.trial().name() + ": " + Headline.of(trial))
            .collect(Collectors.joining(" ")));
  }

  /** A plate alone, its axis as long as the plate takes or as it has been weighed. */
  private static DryingFigure alone(TrialForecast trial, OptionalDouble nowS) {
    DoubleStream ready =
        Arrays.stream(Spot.values())
            .flatMap(
                spot ->
                    Arrays.stream(Milestone.values())
                        .map(milestone -> trial.drying().at(spot).at(milestone).timeS()))
            .flatMapToDouble(DryingFigure::ends);
    DoubleStream weighed = trial.seen().weighings().stream().mapToDouble(Weighing::timeS);
    double lastS = DoubleStream.concat(ready, weighed).max().orElse(0);
    double endS = lastS > 0 ? 1.05 * lastS : trial.drying().curveEndS();
    double shownS =
        nowS.stream()
            .map(now -> 1.05 * now)
            .filter(now -> now > endS && now < LONG_PAST * endS)
            .findFirst()
            .orElse(endS);
    return new DryingFigure(new Frame(100, 44, 508, 270, 560), 0, shownS);
  }

  /** When a plate is ready for good; the end of its curve where it never is (s). */
  private static double settledS(TrialForecast trial) {
    return Awaited.timesS(trial.drying())
        .flatMapToDouble(DryingFigure::ends)
        .max()
        .orElseGet(() -> trial.drying().curveEndS());
  }

  private static DoubleStream ends(Band band) {
    return band.points().filter(Double::isFinite);
  }

  /** A line a spot; the average is drawn over the others. */
  private void spots(TrialForecast trial) {
    line("thin", trial, CurvePoint::thinEdge);
    line("thick", trial, CurvePoint::thickSpot);
    average("nominal", trial);
  }

  private void average(String kind, TrialForecast trial) {
    line(kind, trial, point -> point.nominal().middle());
  }

  private void line(String kind, TrialForecast trial, ToDoubleFunction<CurvePoint> moisture) {
    CurveReading reading = new CurveReading(trial);
    List<double[]> corners =
        corners(
            trial.drying(), timeS -> reading.at(timeS, moisture) / trial.drying().startMoisture());
    lines.add(new Line(kind, CurveFigure.corners(time.scale(), water, corners)));
  }

  private String band(CurveReading reading, DryingForecast drying) {
    double start = drying.startMoisture();
    List<double[]> around =
        corners(drying, timeS -> reading.at(timeS, point -> point.nominal().high()) / start);
    List<double[]> back =
        corners(drying, timeS -> reading.at(timeS, point -> point.nominal().low()) / start);
    Collections.reverse(back);
    around.addAll(back);
    return CurveFigure.corners(time.scale(), water, around);
  }

  /** The points of the curve that lie on the axis, and its two ends. */
  private List<double[]> corners(DryingForecast drying, DoubleUnaryOperator share) {
    double startS = time.scale().from() * time.unitS();
    List<Double> moments = new ArrayList<>(List.of(startS));
    drying.curve().stream()
        .map(CurvePoint::timeS)
        .filter(timeS -> timeS > startS && timeS < time.endS())
        .forEach(moments::add);
    moments.add(time.endS());
    List<double[]> corners = new ArrayList<>();
    for (double timeS : moments) {
      corners.add(new double[] {timeS / time.unitS(), 100 * share.applyAsDouble(timeS)});
    }
    return corners;
  }

  private MeasuredPoint weighed(Weighing weighing, double share) {
    return new MeasuredPoint(
        time.place(weighing.timeS()),
        water.place(100 * share),
        "weighed %s after %s %s"
            .formatted(
                GRAM.noted(weighing.filmMassKg()),
                Figures.noted(weighing.timeS() / time.unitS()),
                time.unit()));
  }

  private void lane(String label, String key, String look, Function<Milestone, Band> whenS) {
    lanes.add(
        Lane.of(
            label,
            key,
            look,
            frame.bottom() + FIRST_LANE + LANE_STEP * lanes.size(),
            time.scale(),
            Awaited.marked(time, whenS)));
  }

  private void upright(double afterPourS, String label) {
    uprights.add(new Upright(time.place(afterPourS), label));
  }

  /** By the clock where the day of the pour is known. */
  private Axis clock(PourCalendar calendar) {
    List<PourCalendar.ClockTick> clock = calendar.clockTicks(time.endS(), MOST_TICKS);
    if (clock.isEmpty()) {
      return time.axis(MOST_TICKS);
    }
    // On a narrow screen the day of the pour would run into the next.
    boolean crowded = clock.size() > 1 && !clock.get(1).under().isEmpty();
    List<Axis.Tick> ticks = new ArrayList<>();
    for (PourCalendar.ClockTick tick : clock) {
      boolean spare =
          tick.label().contains(":")
              ? tick.under().isEmpty() || (crowded && ticks.isEmpty())
              : ticks.size() % 2 == 1;
      ticks.add(new Axis.Tick(time.place(tick.afterPourS()), tick.label(), tick.under(), spare));
    }
    return new Axis("by the clock; poured " + calendar.pour(), ticks);
  }

  private CurveFigure figure(String title, String description) {
    return figure(title, description, Axis.NONE, time.axis(MOST_TICKS), "", "", List.of());
  }

  private CurveFigure figure(
      String title,
      String description,
      Axis right,
      Axis bottom,
      String ghost,
      String shade,
      List<MeasuredPoint> marks) {
    return new CurveFigure(
        title,
        description,
        frame,
        frame.bottom() + FIRST_LANE + LANE_STEP * lanes.size(),
        Axis.of("water still in the film, %", water, 6),
        right,
        bottom,
        ghost,
        shade,
        lines,
        marks,
        lanes,
        uprights);
  }
}
