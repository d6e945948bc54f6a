package starchfilm.casting;

import java.util.function.Function;
import starchfilm.material.air.AirState;

/** The air around the plates, from the pour onwards. */
public sealed interface Room permits ConstantRoom, SwingingRoom, LoggedRoom {
  /**
   * The air at a moment.
   *
   * @param timeS time since the pour (s, 0 or more)
   * @return the air then
   */
  AirState at(double timeS);

  /**
   * Until when the air is known; later days are taken to be like the last one.
   *
   * @return time since the pour (s); positive infinity for a room whose every day is the same
   */
  default double knownUntilS() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The coolest air from the pour on.
   *
   * @return K
   */
  double coolestK();

  /**
   * The warmest air from the pour on.
   *
   * @return K
   */
  double warmestK();

  /**
   * What depends on the kind of room. A new kind takes a function more here, and so does not
   * compile until everything that tells kinds apart knows it.
   *
   * @param constant for a room whose air stays the same
   * @param swinging for a room that warms by day and cools by night
   * @param logged for a room as a hygrometer logged it
   * @param <T> what is found
   * @return what the function of its kind gives
   */
  <T> T map(
      Function<ConstantRoom, T> constant,
      Function<SwingingRoom, T> swinging,
      Function<LoggedRoom, T> logged);

  /**
   * Whether the air never changes.
   *
   * @return true for a constant room
   */
  default boolean isConstant() {
    return map(constant -> true, swinging -> false, logged -> false);
  }

  /**
   * Whether a hygrometer logged it.
   *
   * @return true for a logged room
   */
  default boolean isLogged() {
    return map(constant -> false, swinging -> false, logged -> true);
  }

  /**
   * The same room with the air moving at this speed.
   *
   * @param speedMPerS air speed along the plate (m/s)
   * @return the room
   */
  default Room withSpeed(double speedMPerS) {
    return map(
        constant -> new ConstantRoom(constant.air().withSpeed(speedMPerS)),
        swinging ->
            new SwingingRoom(
                swinging.mean().withSpeed(speedMPerS),
                swinging.temperatureHalfSwingK(),
                swinging.humidityHalfSwing(),
                swinging.warmestAfterPourS()),
        logged -> new LoggedRoom(logged.readings(), speedMPerS));
  }
}
