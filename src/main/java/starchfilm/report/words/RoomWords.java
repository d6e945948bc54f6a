package starchfilm.report.words;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;

import java.util.OptionalDouble;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Room;
import starchfilm.casting.Room.AirRange;
import starchfilm.material.air.AirState;
import starchfilm.numerics.figures.Figures;

/** A room's air in a few words. */
public final class RoomWords {
  private RoomWords() {}

  /**
   * A place to dry at.
   *
   * @param place the place
   * @return its name, if it has one, the air there, and the bench where it is not as warm
   */
  public static String place(DryingPlace place) {
    OptionalDouble benchK = place.benchTemperatureK();
    return (place.name().isBlank() ? "" : place.name() + ": ")
        + air(place.room())
        + (benchK.isPresent() ? ", on a bench of " + CELSIUS.figure(benchK.getAsDouble()) : "");
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
    AirRange range = room.range(AirState::temperatureK);
    return Figures.range(CELSIUS.two(range.low()), CELSIUS.two(range.high())) + " °C" + kind(room);
  }

  /**
   * Its relative humidity.
   *
   * @param room the room
   * @return such as {@code 50 % RH} or {@code 52–90 % RH}
   */
  public static String humidity(Room room) {
    AirRange range = room.range(AirState::relativeHumidity);
    return Figures.range(Figures.whole(100 * range.low()), Figures.whole(100 * range.high()))
        + " % RH";
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
   * The dampness of a room.
   *
   * @param room the room
   * @return mean relative humidity (ratio)
   */
  public static double dampness(Room room) {
    return room.range(AirState::relativeHumidity).mean();
  }

  /**
   * The speed of a room's air.
   *
   * @param room the room
   * @return m/s
   */
  public static double draught(Room room) {
    return room.at(0).speedMPerS();
  }

  private static String kind(Room room) {
    return room.map(
        new Room.Kinds<>(constant -> "", swinging -> ", by night and day", logged -> ", logged"));
  }
}
