package starchfilm.casting;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import starchfilm.material.air.AirState;

/**
 * A room as a hygrometer logged it.
 *
 * <p>Between readings the air is interpolated linearly; before the first it is the first reading.
 * After the last, the log's last 24 h (or all of it, if shorter) are repeated, and the forecast
 * says so.
 *
 * @param readings the readings in order of time; at least one
 * @param speedMPerS air speed, which hygrometers do not log (m/s)
 */
public record LoggedRoom(List<RoomReading> readings, double speedMPerS) implements Room {

  /**
   * One line of the log.
   *
   * @param timeS time since the pour (s; negative before it)
   * @param temperatureK air temperature (K)
   * @param relativeHumidity ratio, 0 to 1
   */
  public record RoomReading(double timeS, double temperatureK, double relativeHumidity) {}

  public LoggedRoom {
    readings = List.copyOf(new ArrayList<>(readings));
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("a room log needs at least one reading");
    }
    for (int i = 1; i < readings.size(); i++) {
      if (!(readings.get(i).timeS() > readings.get(i - 1).timeS())) {
        throw new IllegalArgumentException("the readings of a room log must be in order of time");
      }
    }
  }

  /**
   * This log, its readings averaged over spans of equal length where they stand closer.
   *
   * @param spanS length of a span (s, above 0)
   * @return the thinned log; this one where fewer than a third of the readings would go
   */
  public LoggedRoom averaged(double spanS) {
    Map<Long, List<RoomReading>> spans =
        readings.stream()
            .collect(
                Collectors.groupingBy(
                    reading -> (long) Math.floor(reading.timeS() / spanS),
                    TreeMap::new,
                    Collectors.toList()));
    return 3 * spans.size() > 2 * readings.size()
        ? this
        : new LoggedRoom(spans.values().stream().map(LoggedRoom::mean).toList(), speedMPerS);
  }

  private static RoomReading mean(List<RoomReading> readings) {
    return new RoomReading(
        readings.stream().mapToDouble(RoomReading::timeS).average().orElseThrow(),
        readings.stream().mapToDouble(RoomReading::temperatureK).average().orElseThrow(),
        readings.stream().mapToDouble(RoomReading::relativeHumidity).average().orElseThrow());
  }

  @Override
  public double knownUntilS() {
    return readings.get(readings.size() - 1).timeS();
  }

  @Override
  public AirRange range(ToDoubleFunction<AirState> what) {
    var summary = readings.stream().map(this::air).mapToDouble(what).summaryStatistics();
    return new AirRange(summary.getMin(), summary.getAverage(), summary.getMax());
  }

  @Override
  public Room withSpeed(double speed) {
    return new LoggedRoom(readings, speed);
  }

  @Override
  public <T> T map(Kinds<T> kinds) {
    return kinds.logged().apply(this);
  }

  @Override
  public AirState at(double timeS) {
    double time = timeS <= knownUntilS() ? timeS : repeated(timeS);
    int next = firstAfter(time);
    if (next == 0) {
      return air(readings.get(0));
    }
    if (next == readings.size()) {
      return air(readings.get(next - 1));
    }
    RoomReading before = readings.get(next - 1);
    RoomReading after = readings.get(next);
    double share = (time - before.timeS()) / (after.timeS() - before.timeS());
    return new AirState(
        before.temperatureK() + share * (after.temperatureK() - before.temperatureK()),
        before.relativeHumidity() + share * (after.relativeHumidity() - before.relativeHumidity()),
        speedMPerS);
  }

  private double repeated(double timeS) {
    double length = Math.min(DAY_S, knownUntilS() - readings.get(0).timeS());
    if (length <= 0) {
      return knownUntilS();
    }
    double past = (timeS - knownUntilS()) % length;
    return knownUntilS() - length + past;
  }

  /** A search of its own: the library's, with a comparator, took a seventh of a forecast. */
  private int firstAfter(double timeS) {
    int from = 0;
    int to = readings.size();
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (readings.get(middle).timeS() <= timeS) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }

  private AirState air(RoomReading reading) {
    return new AirState(reading.temperatureK(), reading.relativeHumidity(), speedMPerS);
  }
}
