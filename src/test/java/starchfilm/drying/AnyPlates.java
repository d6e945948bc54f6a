package starchfilm.drying;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.LoggedRoom.RoomReading;
import starchfilm.casting.Room;
import starchfilm.numerics.units.Units;

/** Plates nobody chose: thin and thick pastes and pours in warm and cool, dry and damp rooms. */
final class AnyPlates {
  private AnyPlates() {}

  /** Plates in rooms of constant air. */
  static List<Casting> of(int count) {
    Random random = new Random(5);
    return IntStream.range(0, count)
        .mapToObj(
            i -> plate(random, Castings.room(celsius(random), humidityPct(random), speed(random))))
        .toList();
  }

  /** Plates in logged rooms. */
  static List<Casting> logged(int count) {
    Random random = new Random(6);
    return IntStream.range(0, count).mapToObj(i -> plate(random, log(random))).toList();
  }

  /** Nine days of half-hours: a daily swing and what a cheap hygrometer adds. */
  private static Room log(Random random) {
    double kelvin = between(random, 12, 32) + Units.ZERO_CELSIUS_K;
    double humidity = between(random, 0.2, 0.65);
    double swingK = between(random, 0, 6);
    List<RoomReading> readings = new ArrayList<>();
    for (int i = 0; i < 9 * 48; i++) {
      double day = Math.sin(2 * Math.PI * i / 48);
      readings.add(
          new RoomReading(
              i * 1800.0,
              kelvin + swingK * day + 0.25 * random.nextGaussian(),
              humidity - 0.02 * swingK * day + 0.01 * random.nextGaussian()));
    }
    return new LoggedRoom(readings, speed(random));
  }

  private static Casting plate(Random random, Room room) {
    double wetMm = between(random, 0.5, 8);
    var paste = Castings.paste(between(random, 0.03, 0.13), between(random, 0, 0.6));
    return Castings.plate(wetMm, paste, room, between(random, 20, 80));
  }

  private static double celsius(Random random) {
    return between(random, 12, 42);
  }

  private static double humidityPct(Random random) {
    return between(random, 20, 75);
  }

  private static double speed(Random random) {
    return random.nextDouble() < 0.2 ? 0 : between(random, 0, 0.5);
  }

  private static double between(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }
}
