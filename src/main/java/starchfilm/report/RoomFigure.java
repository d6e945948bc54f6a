package starchfilm.report;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Room;
import starchfilm.material.air.AirState;
import starchfilm.numerics.units.Figures;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.CurveFigure.Frame;
import starchfilm.report.chart.CurveFigure.Line;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.TimeScale;

/** What was read of a room: temperature and humidity over time. */
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
    List<double[]> air = new ArrayList<>();
    List<double[]> humidity = new ArrayList<>();
    double coolest = Double.POSITIVE_INFINITY;
    double warmest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double at = endS * i / STEPS;
      AirState state = room.at(at);
      double celsius = state.temperatureK() - ZERO_CELSIUS_K;
      coolest = Math.min(coolest, celsius);
      warmest = Math.max(warmest, celsius);
      air.add(new double[] {at / time.unitS(), celsius});
      humidity.add(new double[] {at / time.unitS(), PERCENT_PER_UNIT * state.relativeHumidity()});
    }
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
}
