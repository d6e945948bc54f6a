package starchfilm.drying;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.Arrays;

/**
 * The water activity the film of one likely case comes to rest at, lying as it does now.
 *
 * <p>In a varying room it is the mean, over the 24 h before a moment, of what {@link
 * PlateExchange#restingActivity} gives for the air of each half hour. One object serves one thread.
 */
final class RestingActivity {
  private static final double SAMPLE_S = 1_800;
  private static final int WINDOW = (int) (DAY_S / SAMPLE_S);

  private static final int ACTIVITY = 0;
  private static final int KELVIN = 1;

  private final PlateExchange exchange;

  /** Activity and temperature at rest in a room that stays the same. */
  private final double[] constant = new double[2];

  /** Sums of the samples before each, from {@link #first} to {@link #known}, of both. */
  private final double[][] sums = new double[2][4 * WINDOW];

  private int first;
  private int known;

  RestingActivity(PlateExchange exchange) {
    this.exchange = exchange;
  }

  /** Forgets what another case, or other open faces, came to rest at. */
  void restart(double timeS) {
    if (exchange.inConstantRoom()) {
      constant[ACTIVITY] = exchange.restingActivity(timeS);
      constant[KELVIN] = exchange.restingTemperatureK();
      return;
    }
    first = Math.max(0, (int) (timeS / SAMPLE_S) + 1 - WINDOW);
    known = first;
  }

  /** The activity at rest at a moment no earlier than the restart (ratio). */
  double at(double timeS) {
    return trailing(ACTIVITY, timeS);
  }

  /** The film's temperature at rest at that moment (K). */
  double temperatureK(double timeS) {
    return trailing(KELVIN, timeS);
  }

  private double trailing(int of, double timeS) {
    if (exchange.inConstantRoom()) {
      return constant[of];
    }
    double place = timeS / SAMPLE_S;
    int i = (int) place;
    sample(i + 1);
    double before = mean(sums[of], i);
    return before + (place - i) * (mean(sums[of], i + 1) - before);
  }

  private double mean(double[] of, int sample) {
    int from = Math.max(first, sample + 1 - WINDOW);
    return (of[sample + 1] - of[from]) / (sample + 1 - from);
  }

  private void sample(int last) {
    if (last + 1 >= sums[KELVIN].length) {
      Arrays.setAll(sums, of -> Arrays.copyOf(sums[of], 2 * (last + 1)));
    }
    for (; known <= last; known++) {
      sums[ACTIVITY][known + 1] =
          sums[ACTIVITY][known] + exchange.restingActivity(known * SAMPLE_S);
      sums[KELVIN][known + 1] = sums[KELVIN][known] + exchange.restingTemperatureK();
    }
  }
}
