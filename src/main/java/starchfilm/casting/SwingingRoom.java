package starchfilm.casting;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.function.Function;
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
    double swing = Math.cos(2 * Math.PI * (timeS - warmestAfterPourS) / DAY_S);
    return new AirState(
        mean.temperatureK() + temperatureHalfSwingK * swing,
        mean.relativeHumidity() - humidityHalfSwing * swing,
        mean.speedMPerS());
  }

  @Override
  public double coolestK() {
    return mean.temperatureK() - temperatureHalfSwingK;
  }

  @Override
  public double warmestK() {
    return mean.temperatureK() + temperatureHalfSwingK;
  }

  @Override
  public <T> T map(
      Function<ConstantRoom, T> constant,
      Function<SwingingRoom, T> swinging,
      Function<LoggedRoom, T> logged) {
    return swinging.apply(this);
  }
}
