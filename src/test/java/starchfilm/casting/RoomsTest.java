package starchfilm.casting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.LoggedRoom.RoomReading;
import starchfilm.material.air.AirState;

/** Air between the readings of a log and beyond them, and over a day's swing; by hand. */
class RoomsTest {
  private static final double HOUR_S = 3_600;
  private final LoggedRoom log =
      new LoggedRoom(
          List.of(
              new RoomReading(2 * HOUR_S, 283.15, 0.8),
              new RoomReading(8 * HOUR_S, 293.15, 0.5),
              new RoomReading(32 * HOUR_S, 287.15, 0.62)),
          0.1);

  /** Straight between readings, level before the first; from 32 h on the last 24 h repeat. */
  @ParameterizedTest
  @CsvSource({
    "0, 283.15, 0.80",
    "2, 283.15, 0.80",
    "5, 288.15, 0.65",
    "8, 293.15, 0.50",
    "20, 290.15, 0.56",
    "32, 287.15, 0.62",
    "44, 290.15, 0.56",
    "68, 290.15, 0.56",
    "33, 292.90, 0.505"
  })
  void readsTheLog(double hours, double kelvin, double humidity) {
    AirState air = log.at(hours * HOUR_S);
    assertThat(air.temperatureK()).isCloseTo(kelvin, within(1e-9));
    assertThat(air.relativeHumidity()).isCloseTo(humidity, within(1e-9));
    assertThat(air.speedMPerS()).isEqualTo(0.1);
    assertThat(log.knownUntilS()).isEqualTo(32 * HOUR_S);
  }

  /** A log of 12 hours has no day to repeat, so it repeats itself: hour 16 is hour 4. */
  @ParameterizedTest
  @CsvSource({"16, 4", "25, 1", "29, 5"})
  void repeatsAShortLogAsAWhole(double hours, double same) {
    LoggedRoom shortLog =
        new LoggedRoom(
            List.of(
                new RoomReading(0, 290, 0.4),
                new RoomReading(4 * HOUR_S, 298, 0.6),
                new RoomReading(12 * HOUR_S, 292, 0.5)),
            0);
    assertThat(shortLog.at(hours * HOUR_S)).isEqualTo(shortLog.at(same * HOUR_S));
  }

  @Test
  void staysAtItsOnlyReading() {
    LoggedRoom single = new LoggedRoom(List.of(new RoomReading(HOUR_S, 290, 0.4)), 0);
    for (double hours : new double[] {0, 1, 2, 500}) {
      assertThat(single.at(hours * HOUR_S)).isEqualTo(new AirState(290, 0.4, 0));
    }
  }

  @Test
  void refusesALogThatIsEmptyOrOutOfOrder() {
    assertThatThrownBy(() -> new LoggedRoom(List.of(), 0))
        .hasMessage("a room log needs at least one reading");
    List<RoomReading> twice = List.of(new RoomReading(5, 290, 0.4), new RoomReading(5, 290, 0.4));
    assertThatThrownBy(() -> new LoggedRoom(twice, 0))
        .hasMessage("the readings of a room log must be in order of time");
  }

  /** Warmest and driest six hours after the pour, the mean six hours on, coolest at 18 hours. */
  @ParameterizedTest
  @CsvSource({"6, 298.15, 0.45", "12, 293.15, 0.60", "18, 288.15, 0.75", "30, 298.15, 0.45"})
  void swings(double hours, double kelvin, double humidity) {
    Room room = new SwingingRoom(new AirState(293.15, 0.6, 0.2), 5, 0.15, 6 * HOUR_S);
    AirState air = room.at(hours * HOUR_S);
    assertThat(air.temperatureK()).isCloseTo(kelvin, within(1e-9));
    assertThat(air.relativeHumidity()).isCloseTo(humidity, within(1e-9));
    assertThat(air.speedMPerS()).isEqualTo(0.2);
  }

  /** Minutes become half hours whose means are kept; a log of hours stays as it is. */
  @Test
  void averagesReadingsThatStandCloserThanASpan() {
    List<RoomReading> minutes = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      minutes.add(new RoomReading(60 * i, 293 + (i % 2), 0.5 + 0.001 * i));
    }
    LoggedRoom log = new LoggedRoom(minutes, 0.1).averaged(1_800);
    assertThat(log.readings()).hasSize(10);
    RoomReading second = log.readings().get(1);
    assertThat(second.timeS()).isCloseTo(60 * 44.5, within(1e-6));
    assertThat(second.temperatureK()).isCloseTo(293.5, within(1e-9));
    assertThat(second.relativeHumidity()).isCloseTo(0.5445, within(1e-9));
    assertThat(log.averaged(1_800)).isSameAs(log);
    assertThat(log.averaged(3_600).readings()).hasSize(5);
  }
}
