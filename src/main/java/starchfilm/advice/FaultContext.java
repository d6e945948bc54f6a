package starchfilm.advice;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.DryingForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.air.AirState;

/**
 * A fault, the trial it was seen in, and what the model makes of it.
 *
 * @param outlook the set-up that is looked at: the trial's own or a changed one
 * @param seenAtS when the plate was looked at, since the pour (s), if known
 */
record FaultContext(
    Trial trial,
    ObservedFault fault,
    DryingForecast forecast,
    ForecastCache outlook,
    OptionalDouble seenAtS) {
  private static final int MEAN_OVER_H = 72;

  static FaultContext of(
      Trial trial, ObservedFault fault, DryingForecast forecast, ForecastCache outlook) {
    return new FaultContext(trial, fault, forecast, outlook, seenAtS(trial, fault));
  }

  /** A plate that nothing was found wrong with, looked at all over. */
  static FaultContext of(TrialForecast forecast, ForecastCache outlook) {
    ObservedFault none =
        new ObservedFault(
            FaultKind.STILL_WET, FaultPlace.ALL, OptionalDouble.empty(), Optional.empty());
    return new FaultContext(
        forecast.trial(), none, forecast.drying(), outlook, OptionalDouble.empty());
  }

  /** When the fault was seen, as noted; else when the plate was last handled, if that is known. */
  private static OptionalDouble seenAtS(Trial trial, ObservedFault fault) {
    return fault.seenAtS().isPresent()
        ? fault.seenAtS()
        : trial.seen().weighings().stream().mapToDouble(Weighing::timeS).max();
  }

  FaultContext with(ForecastCache other) {
    return new FaultContext(trial, fault, forecast, other, seenAtS);
  }

  FaultContext lookedAtS(double timeS) {
    return new FaultContext(trial, fault, forecast, outlook, OptionalDouble.of(timeS));
  }

  Casting setup() {
    return outlook.setup();
  }

  /** Where on the plate the model looks; the thick spot where the fault was all over. */
  Spot spot() {
    return fault.where() == FaultPlace.EDGE ? Spot.THIN_EDGE : Spot.THICK_SPOT;
  }

  /**
   * Whether the file says something of a field, so that the figure is more than an assumption; of
   * "seen", whether it is known when the plate was looked at. Nobody notes the stirring.
   */
  boolean notes(String field) {
    return switch (field) {
      case "seen" -> seenAtS.isPresent();
      case "fault.at" -> fault.seenAtS().isPresent();
      case "stirring" -> false;
      default ->
          trial.notRecorded().stream()
              .noneMatch(
                  missing ->
                      missing.field().equals(field) || field.startsWith(missing.field() + "."));
    };
  }

  /** The air of the room when the plate was looked at, or at the pour. */
  AirState airThen() {
    return setup().place().room().at(seenAtS.orElse(0));
  }

  /** The air of the room, averaged over the first three days. */
  AirState meanAir() {
    double temperature = 0;
    double humidity = 0;
    double speed = 0;
    for (int hour = 0; hour < MEAN_OVER_H; hour++) {
      AirState air = setup().room().at(hour * HOUR_S);
      temperature += air.temperatureK() / MEAN_OVER_H;
      humidity += air.relativeHumidity() / MEAN_OVER_H;
      speed += air.speedMPerS() / MEAN_OVER_H;
    }
    return new AirState(temperature, humidity, speed);
  }

  /** The damper of the air of use and the air of the room. */
  double dampestHumidity() {
    return Math.max(setup().use().relativeHumidity(), airThen().relativeHumidity());
  }

  /** The drier of the air of use and the air of the room. */
  double driestHumidity() {
    return Math.min(setup().use().relativeHumidity(), airThen().relativeHumidity());
  }
}
