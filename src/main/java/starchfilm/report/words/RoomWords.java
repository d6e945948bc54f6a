package starchfilm.report.words;

import static starchfilm.numerics.units.ReaderUnit.CELSIUS;

import java.util.List;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.Room;
import starchfilm.numerics.units.Figures;

/** A room's air in a few words. */
public final class RoomWords {
  private RoomWords() {}

  /** The lowest, middle and highest of one thing in a room. */
  private record Reach(double low, double middle, double high) {
    private static Reach still(double value) {
      return new Reach(value, value, value);
    }

    private static Reach around(double middle, double half) {
      return new Reach(middle - half, middle, middle + half);
    }

    private static Reach of(
        List<LoggedRoom.Reading> readings, ToDoubleFunction<LoggedRoom.Reading> what) {
      var summary = readings.stream().mapToDouble(what).summaryStatistics();
      return new Reach(summary.getMin(), summary.getAverage(), summary.getMax());
    }
  }

  /**
   * Its air.
   *
   * @param room the room
   * @return such as {@code 20 °C, 50 % RH, air at 0.10 m/s}
   */
  public static String air(Room room) {
    return temperature(room) + ", " + humidity(room) + ", air at " + speed(room);
  }

  /**
   * Its temperature.
   *
   * @param room the room
   * @return such as {@code 20 °C} or {@code 4–18 °C}
   */
  public static String temperature(Room room) {
    Reach reach = temperatureReach(room);
    return range(CELSIUS.two(reach.low()), CELSIUS.two(reach.high())) + " °C" + kind(room);
  }

  /**
   * Its relative humidity.
   *
   * @param room the room
   * @return such as {@code 50 % RH} or {@code 52–90 % RH}
   */
  public static String humidity(Room room) {
    Reach reach = humidityReach(room);
    return range(Figures.whole(100 * reach.low()), Figures.whole(100 * reach.high())) + " % RH";
  }

  /**
   * The speed of its air.
   *
   * @param room the room
   * @return such as {@code 0.10 m/s}
   */
  public static String speed(Room room) {
    return Figures.two(draught(room)) + " m/s";
  }

  /**
   * How warm it is.
   *
   * @param room the room
   * @return mean temperature (K)
   */
  public static double warmth(Room room) {
    return temperatureReach(room).middle();
  }

  /**
   * How damp it is.
   *
   * @param room the room
   * @return mean relative humidity (ratio)
   */
  public static double dampness(Room room) {
    return humidityReach(room).middle();
  }

  /**
   * How fast its air moves.
   *
   * @param room the room
   * @return m/s
   */
  public static double draught(Room room) {
    return room.at(0).speedMPerS();
  }

  private static Reach temperatureReach(Room room) {
    return room.map(
        constant -> Reach.still(constant.air().temperatureK()),
        swinging -> Reach.around(swinging.mean().temperatureK(), swinging.temperatureHalfSwingK()),
        logged -> Reach.of(logged.readings(), LoggedRoom.Reading::temperatureK));
  }

  private static Reach humidityReach(Room room) {
    return room.map(
        constant -> Reach.still(constant.air().relativeHumidity()),
        swinging -> Reach.around(swinging.mean().relativeHumidity(), swinging.humidityHalfSwing()),
        logged -> Reach.of(logged.readings(), LoggedRoom.Reading::relativeHumidity));
  }

  private static String range(String low, String high) {
    return low.equals(high) ? low : Figures.range(low, high);
  }

  private static String kind(Room room) {
    return room.map(constant -> "", swinging -> ", by night and day", logged -> ", logged");
  }
}
