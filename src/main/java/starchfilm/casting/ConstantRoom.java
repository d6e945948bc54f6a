package starchfilm.casting;

import java.util.function.Function;
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
  public double coolestK() {
    return air.temperatureK();
  }

  @Override
  public double warmestK() {
    return air.temperatureK();
  }

  @Override
  public <T> T map(
      Function<ConstantRoom, T> constant,
      Function<SwingingRoom, T> swinging,
      Function<LoggedRoom, T> logged) {
    return constant.apply(this);
  }
}
