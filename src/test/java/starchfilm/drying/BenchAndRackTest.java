package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Room;
import starchfilm.casting.Spot;
import starchfilm.casting.SwingingRoom;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.material.air.AirState;
import starchfilm.material.wetfilm.SolidsHeat;

/** A plate on a warm bench, and one that is moved from there: it rests as it lies in the end. */
class BenchAndRackTest {
  private static final double HOUR_S = 3_600;
  private static final Room ROOM = Castings.room(20, 50, 0.1);
  private static final Room SWING =
      new SwingingRoom(new AirState(293.15, 0.5, 0.1), 3, 0.1, 6 * HOUR_S);
  private static final DryingForecaster FORECASTER =
      new DryingForecaster(ParameterDistribution.textbook(), DryingForecaster.DRAWS);

  /**
   * Moved at 5 hours it has most of its water yet, at 14 it is drier than the rack will keep it.
   */
  @ParameterizedTest
  @CsvSource({"5, BOTH", "14, BOTH", "5, TURNED", "14, TURNED"})
  void aPlateMovedFromAWarmBenchDries(double hours, OpenFaces open) {
    DryingForecast forecast =
        FORECASTER.forecast(plate(ROOM, 45, new FaceChange(hours * HOUR_S, open)));
    assertThat(forecast.verdict()).isEqualTo(DryingVerdict.DRIES);
    for (Spot spot : Spot.values()) {
      MilestoneForecast dry = forecast.at(spot).at(Milestone.DRY_THROUGH);
      assertThat(dry.shareReached()).as("%s", spot).isEqualTo(1);
      assertThat(dry.timeS().high()).isLessThan(5 * 24 * HOUR_S);
    }
  }

  /** On a rack the bench warms nothing, so the film keeps what the rack's air gives it. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void onARackItKeepsWhatTheAirGivesIt(boolean constant) {
    Room room = constant ? ROOM : SWING;
    FaceChange moved = new FaceChange(5 * HOUR_S, OpenFaces.BOTH);
    double racked = FORECASTER.forecast(plate(room, 45, moved)).equilibriumMoisture();
    double never = FORECASTER.forecast(plate(room, 20)).equilibriumMoisture();
    double benched = FORECASTER.forecast(plate(room, 45)).equilibriumMoisture();
    assertThat(racked).isCloseTo(never, within(0.01));
    assertThat(benched).isLessThan(0.5 * never);
  }

  /** A case with a weaker bench or stiller air stays cooler and rests moister; it dries too. */
  @ParameterizedTest
  @CsvSource({"15", "30", "45", "60"})
  void everyLikelyCaseOfAWarmOrCoolBenchDries(double benchC) {
    SpotForecast thick = FORECASTER.forecast(plate(ROOM, benchC), Spot.THICK_SPOT);
    assertThat(thick.at(Milestone.DRY_THROUGH).shareReached()).isEqualTo(1);
  }

  /** Whoever measures the bench and finds it as warm as the air has told nothing new. */
  @Test
  void aBenchAsWarmAsTheAirChangesNothing() {
    assertThat(FORECASTER.forecast(plate(ROOM, 20)))
        .isEqualTo(FORECASTER.forecast(Castings.plate(3, Castings.paste(0.08, 0.3), ROOM, 60)));
  }

  /**
   * From 12 to 32 degrees by tenths. The steepest step is where the film gets warmer than the room
   * and the air over it begins to rise, 4 %; the bench at the air's temperature took off 23 % once.
   */
  @Test
  void theTimeFallsSmoothlyWithTheBench() {
    double[] hours =
        DoubleStream.iterate(12, celsius -> celsius < 32, celsius -> celsius + 0.1)
            .map(celsius -> SolvedPlates.hoursToDry(plate(ROOM, celsius)))
            .toArray();
    for (int i = 1; i < hours.length; i++) {
      assertThat(hours[i] / hours[i - 1]).isBetween(0.95, 1.005);
    }
    assertThat(hours[hours.length - 1]).isLessThan(0.6 * hours[0]);
  }

  /** At the air's temperature and activity only the bench brings heat: U times its difference. */
  @ParameterizedTest
  @CsvSource({"45, 30", "60, 30", "20.0001, 3", "23, 20.0674"})
  void theConductanceIsThatOfAKeptBenchOrOfAMeasuredOne(double benchC, double wPerM2K) {
    Casting drying = plate(ROOM, benchC);
    PreparedCase prepared = PreparedCase.of(drying);
    PlateExchange exchange = new PlateExchange(drying, prepared.material().isotherm());
    double solidsKgPerM2 = 0.3;
    exchange.setCase(ParameterSample.NONE, prepared.material(), solidsKgPerM2);
    double moisture = prepared.material().isotherm().moisture(0.5, 293.15);
    exchange.evaluate(0, moisture, moisture, moisture, 293.15);
    double capacity =
        solidsKgPerM2 * (SolidsHeat.jPerKgK(drying.composition()) + moisture * 4180)
            + drying.plate().heatCapacityJPerM2K();
    double askedWPerM2 = wPerM2K * (benchC - 20);
    assertThat(exchange.borderRate() * capacity)
        .isCloseTo(askedWPerM2, within(1e-5 + 1e-3 * askedWPerM2));
  }

  private static Casting plate(Room room, double benchC, FaceChange... faces) {
    return Castings.plate(
        3, Castings.paste(0.08, 0.3), room, 60, OptionalDouble.of(benchC), List.of(faces));
  }
}
