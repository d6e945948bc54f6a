package starchfilm.drying;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.Plate;
import starchfilm.material.air.AirState;
import starchfilm.material.air.PlateTransfer;
import starchfilm.material.air.SaturationPressure;
import starchfilm.material.air.WagnerPruss1993;

/**
 * The water activity a film comes to rest at: {@code a = p_v/p_sat(T_film)} at the film's own
 * steady temperature, which is the air's unless the bench is warmer or cooler.
 *
 * <p>In a varying room it is the mean of that over the 24 h before. Immutable.
 */
final class RestingActivity {
  private static final double SAMPLE_S = 1_800;
  private static final SaturationPressure SATURATION = new WagnerPruss1993();
  private static final int STEADY_ROUNDS = 60;
  private static final double STEADY_K = 1e-9;

  /** Means over the day before, one each {@link #SAMPLE_S}; one alone for a constant room. */
  private final double[] trailingMeans;

  private RestingActivity(double[] trailingMeans) {
    this.trailingMeans = trailingMeans;
  }

  static RestingActivity in(Casting drying, double horizonS) {
    if (drying.room() instanceof ConstantRoom constant) {
      return new RestingActivity(new double[] {of(constant.air(), drying)});
    }
    int count = (int) Math.ceil(horizonS / SAMPLE_S) + 2;
    int window = (int) (DAY_S / SAMPLE_S);
    double[] sums = new double[count + 1];
    for (int i = 0; i < count; i++) {
      sums[i + 1] = sums[i] + of(drying.room().at(i * SAMPLE_S), drying);
    }
    double[] means = new double[count];
    for (int i = 0; i < count; i++) {
      int from = Math.max(0, i + 1 - window);
      means[i] = (sums[i + 1] - sums[from]) / (i + 1 - from);
    }
    return new RestingActivity(means);
  }

  /** The activity at rest at a moment, over the day before it. */
  double at(double timeS) {
    if (trailingMeans.length == 1) {
      return trailingMeans[0];
    }
    double place = Math.min(timeS / SAMPLE_S, trailingMeans.length - 1.0);
    int i = Math.min((int) place, trailingMeans.length - 2);
    double share = place - i;
    return trailingMeans[i] + share * (trailingMeans[i + 1] - trailingMeans[i]);
  }

  private static double of(AirState air, Casting drying) {
    OptionalDouble bench = drying.benchTemperatureK();
    if (bench.isEmpty() || bench.getAsDouble() == air.temperatureK()) {
      return air.relativeHumidity();
    }
    Plate plate = drying.plate();
    PlateTransfer transfer = new PlateTransfer(plate.lengthM(), plate.widthM(), plate.rimHeightM());
    transfer.setAir(air);
    double filmK = air.temperatureK();
    for (int round = 0; round < STEADY_ROUNDS; round++) {
      double activity = Math.min(1, transfer.airVapourPressurePa() / SATURATION.pa(filmK));
      transfer.evaluate(filmK, activity);
      double fromAir = transfer.convectionWPerM2K() + transfer.radiationWPerM2K();
      double next =
          (fromAir * air.temperatureK() + PlateExchange.KEPT_BENCH_W_PER_M2K * bench.getAsDouble())
              / (fromAir + PlateExchange.KEPT_BENCH_W_PER_M2K);
      if (Math.abs(next - filmK) < STEADY_K) {
        break;
      }
      filmK = next;
    }
    return Math.min(1, transfer.airVapourPressurePa() / SATURATION.pa(filmK));
  }
}
