package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Castings;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.LoggedRoom.RoomReading;
import starchfilm.casting.Room;
import starchfilm.casting.Spot;
import starchfilm.casting.SwingingRoom;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.material.air.AirState;
import starchfilm.numerics.evidence.Band;

/** What is said of a room that is damp always, or for days. */
class DampRoomTest {
  private static final double HOUR_S = 3_600;
  private static final double DAY_S = 24 * HOUR_S;
  private static final DryingForecaster FORECASTER =
      new DryingForecaster(ParameterDistribution.textbook(), DryingForecaster.DRAWS);

  @Test
  void aRoomThatTurnsDryAfterThreeDaysDriesTheFilmThen() {
    DryingForecast forecast = forecast(log(0.97, 0.40));
    assertThat(forecast.verdict()).isEqualTo(DryingVerdict.DRIES);
    Band dry = forecast.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
    assertThat(dry.low()).isGreaterThan(3.2 * DAY_S);
    assertThat(dry.high()).isLessThan(8 * DAY_S);
    assertThat(forecast.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).shareReached()).isEqualTo(1);
    assertThat(forecast.equilibriumMoisture()).isLessThan(0.2);
  }

  /** The mirror: what comes after the film was dry does not make it wet before. */
  @Test
  void aRoomThatTurnsDampAfterThreeDaysHasDriedTheFilmBefore() {
    DryingForecast forecast = forecast(log(0.40, 0.97));
    assertThat(forecast.verdict()).isEqualTo(DryingVerdict.DRIES);
    assertThat(forecast.at(Spot.NOMINAL).at(Milestone.DRY_THROUGH).timeS().middle())
        .isLessThan(3.2 * DAY_S);
    assertThat(forecast.equilibriumMoisture()).isLessThan(0.2);
  }

  /** Three muggy days bring the film to rest too soft; it is dry when the weather has turned. */
  @Test
  void aFilmThatRestsSoftInAMuggySpellIsDryOnlyAfterIt() {
    DryingForecast forecast = forecast(log(0.88, 0.40), 1);
    assertThat(forecast.verdict()).isEqualTo(DryingVerdict.DRIES);
    MilestoneForecast dry = forecast.at(Spot.NOMINAL).at(Milestone.DRY_THROUGH);
    assertThat(dry.timeS().middle()).isGreaterThan(3.2 * DAY_S);
    assertThat(dry.timeS().middle())
        .isGreaterThanOrEqualTo(forecast.at(Spot.NOMINAL).at(Milestone.PEELABLE).timeS().middle());
  }

  @Test
  void aLogThatIsDampToItsEndIsTooDamp() {
    DryingForecast forecast = forecast(log(0.99, 0.99));
    assertThat(forecast.verdict()).isEqualTo(DryingVerdict.TOO_DAMP);
    assertThat(forecast.at(Spot.NOMINAL).at(Milestone.DRY_THROUGH).timeS().low()).isInfinite();
  }

  @ParameterizedTest
  @ValueSource(doubles = {70, 74, 76, 78, 80, 82, 84, 86, 90, 92})
  void peelableNeverComesAfterDryThrough(double humidityPct) {
    saysNothingTwice(forecast(Castings.room(20, humidityPct, 0.1)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {70, 76, 80, 84, 90})
  void norInARoomThatSwings(double humidityPct) {
    saysNothingTwice(
        forecast(new SwingingRoom(new AirState(293.15, humidityPct / 100, 0.1), 3, 0.08, 0)));
  }

  private static void saysNothingTwice(DryingForecast forecast) {
    for (Spot spot : Spot.values()) {
      MilestoneForecast skin = forecast.at(spot).at(Milestone.SKIN_DRY);
      MilestoneForecast peel = forecast.at(spot).at(Milestone.PEELABLE);
      MilestoneForecast dry = forecast.at(spot).at(Milestone.DRY_THROUGH);
      if (Double.isInfinite(peel.timeS().low())) {
        assertThat(peel.shareReached()).isLessThanOrEqualTo(0.1);
        assertThat(dry.shareReached()).isGreaterThan(0.1);
      } else {
        assertThat(peel.shareReached()).isGreaterThan(0.1);
        assertThat(skin.timeS().low()).isLessThanOrEqualTo(peel.timeS().low());
        assertThat(peel.timeS().low()).isLessThanOrEqualTo(dry.timeS().low());
        assertThat(peel.timeS().middle()).isLessThanOrEqualTo(dry.timeS().middle());
        assertThat(peel.timeS().high()).isLessThanOrEqualTo(dry.timeS().high());
        assertThat(peel.timeS().high()).isFinite();
      }
    }
    double peels =
        Stream.of(Spot.values())
            .mapToDouble(spot -> forecast.at(spot).at(Milestone.PEELABLE).shareReached())
            .max()
            .orElseThrow();
    // Where the film nears 0.35 from above for weeks, a firm case may run out of time.
    assertThat(forecast.verdict())
        .isIn(
            peels >= 0.9
                ? List.of(DryingVerdict.DRIES)
                : List.of(
                    DryingVerdict.DRIES,
                    DryingVerdict.MAY_STAY_SOFT,
                    DryingVerdict.NEVER_PEELABLE));
  }

  private static DryingForecast forecast(Room room) {
    return forecast(room, 3);
  }

  private static DryingForecast forecast(Room room, double wetMm) {
    return FORECASTER.forecast(Castings.plate(wetMm, Castings.paste(0.08, 0.4), room, 60));
  }

  /** Half-hours of 20 degrees, the humidity changing once, 3.2 days after the pour. */
  private static Room log(double before, double after) {
    List<RoomReading> readings = new ArrayList<>();
    for (double time = 0; time <= 10 * DAY_S; time += HOUR_S / 2) {
      readings.add(new RoomReading(time, 293.15, time < 3.2 * DAY_S ? before : after));
    }
    return new LoggedRoom(readings, 0.1);
  }
}
