package starchfilm.casting;

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

  /** The highest temperature it reaches (K). */
  double warmestK();
}
