package starchfilm.casting;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.function.ToDoubleFunction;
import starchfilm.material.air.AirState;

/**
 * A room that warms by day and cools by night, humidity swinging the other way.
 *
 * <p>Both follow a cosine of 24 h: {@code T = mean + half-swing cos(2 pi (t - t_w)/24 h)}, RH with
 * the opposite sign.
 *
 * @param mean the day's mean air
 * @param temperatureHalfSwingK half the difference of warmest and coolest (K, 0 or more)
 * @param humidityHalfSwing half the difference of dampest and driest (ratio, 0 or more; mean and
 *     half-swing stay within 0 to 1)
 * @param warmestAfterPourS time from the pour to the day's warmest moment (s)
 */
public record SwingingRoom(
    AirState mean, double temperatureHalfSwingK, double humidityHalfSwing, double warmestAfterPourS)
    implements Room {

  @Override
  public AirState at(double timeS) {
    return swung(Math.cos(2 * Math.PI * (timeS - warmestAfterPourS) / DAY_S));
  }

  /** The air at a share of the half-swing, 1 where it is warmest and -1 where it is coolest. */
  private AirState swung(double swing) {
    return new AirState(
        mean.temperatureK() + temperatureHalfSwingK * swing,
        mean.relativeHumidity() - humidityHalfSwing * swing,
        mean.speedMPerS());
  }

  @Override
  public AirRange range(ToDoubleFunction<AirState> what) {
    double warmest = what.applyAsDouble(swung(1));
    double coolest = what.applyAsDouble(swung(-1));
    return new AirRange(
        Math.min(coolest, warmest), what.applyAsDouble(mean), Math.max(coolest, warmest));
  }

  @Override
  public Room withSpeed(double speedMPerS) {
    return new SwingingRoom(
        mean.withSpeed(speedMPerS), temperatureHalfSwingK, humidityHalfSwing, warmestAfterPourS);
  }

  @Override
  public <T> T map(Kinds<T> kinds) {
    return kinds.swinging().apply(this);
  }
}
