package starchfilm.casting;

import starchfilm.material.air.AirState;

/**
 * A room whose air stays the same.
 *
 * @param air its air
 */
public record ConstantRoom(AirState air) implements Room {
  @Override
  public AirState at(double timeS) {
    return air;
  }

  @Override
  public double warmestK() {
    return air.temperatureK();
  }
}
