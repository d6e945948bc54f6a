package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.LoggedRoom.RoomReading;
import starchfilm.casting.Room;
import starchfilm.casting.SwingingRoom;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.material.air.AirState;
import starchfilm.material.air.PlateTransfer;
import starchfilm.material.air.WagnerPruss1993;

/** What activity a film comes to rest at: nothing leaves it there and its heat balances. */
class RestingActivityTest {
  private static final double HOUR_S = 3_600;
  private static final WagnerPruss1993 SATURATION = new WagnerPruss1993();

  @Test
  void isTheHumidityWhereTheBenchIsAsWarmAsTheAir() {
    assertThat(resting(Castings.USUAL).at(0)).isEqualTo(0.5);
    assertThat(resting(onBench(20)).at(1e6)).isEqualTo(0.5);
  }

  /**
   * The film's own temperature is read back from the activity, {@code p_sat(T) = p_v/a}; there no
   * vapour may pass, and what comes from the bench must leave to the air.
   */
  @ParameterizedTest
  @CsvSource({"30", "40", "60", "17", "21", "20.1"})
  void balancesOnAKeptBench(double benchC) {
    Casting drying = onBench(benchC);
    double activity = resting(drying).at(0);
    double airK = 293.15;
    double vapourPa = 0.5 * SATURATION.pa(airK);
    double filmK =
        new BrentSolver(1e-12).solve(200, t -> SATURATION.pa(t) - vapourPa / activity, 275, 370);
    PlateTransfer transfer = new PlateTransfer(0.2, 0.2, 0);
    transfer.setAir(airK, 0.5, drying.room().at(0).speedMPerS());
    transfer.evaluate(filmK, activity);
    double toAir = (transfer.convectionWPerM2K() + transfer.radiationWPerM2K()) * (filmK - airK);
    double apartK = benchC - 20;
    double kept = 1 - Math.exp(-apartK * apartK / 9);
    double fromBench = (3 + 27 * kept) * (benchC + 273.15 - filmK);
    assertThat(transfer.vapourFluxKgPerM2S()).isCloseTo(0, within(1e-12));
    assertThat(toAir).isCloseTo(fromBench, within(1e-5));
    assertThat(activity < 0.5).isEqualTo(benchC > 20);
  }

  /** Half of what air of 20 C can hold is more than a film of 9 C can: it lies in dew. */
  @Test
  void isSaturationOnABenchBelowTheDewPoint() {
    assertThat(resting(onBench(5)).at(0)).isEqualTo(1);
  }

  /**
   * The mean of {@code cos} over a time t from its crest is {@code sin(wt)/(wt)}; over a day, 0.
   */
  @ParameterizedTest
  @CsvSource({"3", "6", "10.25", "18", "24", "30", "71.9"})
  void isTheMeanOfTheDayBefore(double hours) {
    Room room = new SwingingRoom(new AirState(293.15, 0.55, 0.1), 5, 0.15, 0);
    Casting drying = Castings.plate(3, Castings.paste(0.08, 0.3), room, 60);
    double phase = 2 * Math.PI * hours / 24;
    double mean = hours >= 24 ? 0.55 : 0.55 - 0.15 * Math.sin(phase) / phase;
    // The mean is one of half-hourly samples, the first of which is the crest.
    assertThat(resting(drying).at(hours * HOUR_S)).isCloseTo(mean, within(0.012));
    assertThat(resting(drying).at(1e7)).isCloseTo(0.55, within(1e-3));
    // It is coolest when it is dampest: 5 K for every 15 % of humidity.
    assertThat(resting(drying).temperatureK(hours * HOUR_S))
        .isCloseTo(293.15 + (0.55 - mean) * 5 / 0.15, within(0.4));
    assertThat(resting(drying).temperatureK(1e7)).isCloseTo(293.15, within(1e-2));
  }

  /** Half-hourly samples of a straight rise: their mean rises straight too, half as steep. */
  @Test
  void isExactForAStraightRise() {
    Room room =
        new LoggedRoom(
            List.of(new RoomReading(0, 293.15, 0.3), new RoomReading(100 * HOUR_S, 293.15, 0.8)),
            0.1);
    RestingActivity resting = resting(Castings.plate(3, Castings.paste(0.08, 0.3), room, 60));
    assertThat(resting.at(10 * HOUR_S)).isCloseTo(0.3 + 0.005 * 5, within(1e-9));
    assertThat(resting.at(10.25 * HOUR_S)).isCloseTo(0.3 + 0.005 * 5.125, within(1e-9));
    // 48 samples, the last of them now: on average 11.75 hours old.
    assertThat(resting.at(60 * HOUR_S)).isCloseTo(0.3 + 0.005 * (60 - 11.75), within(1e-9));
    // A film that is turned then still rests with the day before.
    Casting plate = Castings.plate(3, Castings.paste(0.08, 0.3), room, 60);
    assertThat(resting(plate, OpenFaces.TURNED, 60 * HOUR_S).at(60 * HOUR_S))
        .isCloseTo(0.3 + 0.005 * (60 - 11.75), within(1e-9));
    assertThat(resting(plate, OpenFaces.TURNED, 10 * HOUR_S).at(10 * HOUR_S))
        .isCloseTo(0.3 + 0.005 * 5, within(1e-9));
  }

  private static RestingActivity resting(Casting drying) {
    return resting(drying, OpenFaces.UPPER, 0);
  }

  private static RestingActivity resting(Casting drying, OpenFaces faces, double sinceS) {
    PreparedCase prepared = PreparedCase.of(drying);
    PlateExchange exchange = new PlateExchange(drying, prepared.material().isotherm());
    exchange.setCase(ParameterSample.NONE, prepared.material(), 0.3);
    exchange.setOpenFaces(faces);
    RestingActivity resting = new RestingActivity(exchange);
    resting.restart(sinceS);
    return resting;
  }

  private static Casting onBench(double celsius) {
    return Castings.plate(
        3,
        Castings.paste(0.08, 0.3),
        Castings.room(20, 50, 0.1),
        60,
        OptionalDouble.of(celsius),
        List.of());
  }
}
