package starchfilm.casting;

import java.util.function.ToDoubleFunction;
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
  public AirRange range(ToDoubleFunction<AirState> what) {
    double always = what.applyAsDouble(air);
    return new AirRange(always, always, always);
  }

  @Override
  public boolean isConstant() {
    return true;
  }

  @Override
  public Room withSpeed(double speedMPerS) {
    return new ConstantRoom(air.withSpeed(speedMPerS));
  }

  @Override
  public <T> T map(Kinds<T> kinds) {
    return kinds.constant().apply(this);
  }
}
