package starchfilm.casting;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
   * How far something of the air goes from the pour on.
   *
   * @param what such as {@link AirState#temperatureK()}
   * @return its lowest, mean and highest, in its unit
   */
  AirRange range(ToDoubleFunction<AirState> what);

  /** The warmest air from the pour on (K). */
  default double warmestK() {
    return range(AirState::temperatureK).high();
  }

  /**
   * Until when the air is known; later days are taken to be like the last one.
   *
   * @return time since the pour (s); positive infinity for a room whose every day is the same
   */
  default double knownUntilS() {
    return Double.POSITIVE_INFINITY;
  }

  /** Whether the air never changes. */
  default boolean isConstant() {
    return false;
  }

  /** Whether a hygrometer logged it. */
  default boolean isLogged() {
    return Double.isFinite(knownUntilS());
  }

  /**
   * The same room with the air moving at this speed.
   *
   * @param speedMPerS air speed along the plate (m/s)
   * @return the room
   */
  Room withSpeed(double speedMPerS);

  /**
   * What depends on the kind of room.
   *
   * @param kinds a function for each kind
   * @param <T> what is found
   * @return what the function of its kind gives
   */
  <T> T map(Kinds<T> kinds);

  /**
   * A function for each kind of room. A new kind takes one more here, and so does not compile until
   * everything that tells kinds apart knows it.
   *
   * @param constant for a room whose air stays the same
   * @param swinging for a room that warms by day and cools by night
   * @param logged for a room as a hygrometer logged it
   * @param <T> what they give
   */
  record Kinds<T>(
      Function<ConstantRoom, T> constant,
      Function<SwingingRoom, T> swinging,
      Function<LoggedRoom, T> logged) {}

  /** The lowest, mean and highest of something. */
  record AirRange(double low, double mean, double high) {}
}
