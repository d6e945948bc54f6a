package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import starchfilm.casting.Room;
import starchfilm.material.air.AirState;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.CurveFigure.Frame;
import starchfilm.report.chart.CurveFigure.Line;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.TimeScale;

/** A figure of the readings of a room: temperature and humidity over time. */
public final class RoomFigure {
  private static final Frame FRAME = new Frame(60, 34, 508, 190, 560);
  private static final int HEIGHT = 250;
  private static final int STEPS = 400;
  private static final int MOST_TICKS = 8;
  private static final int MOST_SIDE_TICKS = 5;

  private RoomFigure() {}

  /**
   * Draws a room.
   *
   * @param room the room
   * @param endS how long it is drawn for, from the pour on (s)
   * @return the figure: air against the left axis, humidity against the right one
   */
  public static CurveFigure of(Room room, double endS) {
    TimeScale time = TimeScale.of(0, endS, FRAME.left(), FRAME.right());
    List<double[]> air = course(room, time, state -> CELSIUS.of(state.temperatureK()));
    List<double[]> humidity = course(room, time, state -> PERCENT.of(state.relativeHumidity()));
    DoubleSummaryStatistics read = air.stream().mapToDouble(at -> at[1]).summaryStatistics();
    double coolest = read.getMin();
    double warmest = read.getMax();
    double low = 5 * Math.floor(coolest / 5);
    double high = Math.max(low + 5, 5 * Math.ceil(warmest / 5));
    Scale celsius = Scale.linear(low, high, FRAME.bottom(), FRAME.top());
    Scale percent = Scale.linear(0, 100, FRAME.bottom(), FRAME.top());
    return new CurveFigure(
        "The room as it was read",
        "Air between %s and %s °C, solid; relative humidity, dashed."
            .formatted(Figures.two(coolest), Figures.two(warmest)),
        FRAME,
        HEIGHT,
        Axis.of("air, °C (solid)", celsius, MOST_SIDE_TICKS),
        Axis.of("relative humidity, % (dashed)", percent, MOST_SIDE_TICKS),
        time.axis(MOST_TICKS),
        "",
        "",
        List.of(
            new Line("nominal", CurveFigure.corners(time.scale(), celsius, air)),
            new Line("thick", CurveFigure.corners(time.scale(), percent, humidity))),
        List.of(),
        List.of(),
        List.of());
  }

  private static List<double[]> course(
      Room room, TimeScale time, ToDoubleFunction<AirState> figure) {
    return IntStream.rangeClosed(0, STEPS)
        .mapToDouble(step -> time.endS() * step / STEPS)
        .mapToObj(s -> new double[] {s / time.unitS(), figure.applyAsDouble(room.at(s))})
        .toList();
  }
}
