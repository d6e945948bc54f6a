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

  private final PlateExchange exchange;
  private double constant;
  private double constantK;

  /** Sums of the samples before each, from {@link #first} to {@link #known}. */
  private double[] sums = new double[4 * WINDOW];

  /** Sums of the film's temperatures at rest likewise (K). */
  private double[] sumsK = new double[4 * WINDOW];

  private int first;
  private int known;

  RestingActivity(PlateExchange exchange) {
    this.exchange = exchange;
  }

  /** Forgets what another case, or other open faces, came to rest at. */
  void restart(double timeS) {
    if (exchange.inConstantRoom()) {
      constant = exchange.restingActivity(timeS);
      constantK = exchange.restingTemperatureK();
      return;
    }
    first = Math.max(0, (int) (timeS / SAMPLE_S) + 1 - WINDOW);
    known = first;
    reserve(first);
    sums[first] = 0;
    sumsK[first] = 0;
  }

  /** The activity at rest at a moment no earlier than the restart (ratio). */
  double at(double timeS) {
    if (exchange.inConstantRoom()) {
      return constant;
    }
    sample((int) (timeS / SAMPLE_S) + 1);
    return trailing(sums, timeS);
  }

  /** The film's temperature at rest at that moment (K). */
  double temperatureK(double timeS) {
    if (exchange.inConstantRoom()) {
      return constantK;
    }
    sample((int) (timeS / SAMPLE_S) + 1);
    return trailing(sumsK, timeS);
  }

  private double trailing(double[] of, double timeS) {
    double place = timeS / SAMPLE_S;
    int i = (int) place;
    double before = mean(of, i);
    return before + (place - i) * (mean(of, i + 1) - before);
  }

  private double mean(double[] of, int sample) {
    int from = Math.max(first, sample + 1 - WINDOW);
    return (of[sample + 1] - of[from]) / (sample + 1 - from);
  }

  private void sample(int last) {
    reserve(last + 1);
    for (; known <= last; known++) {
      sums[known + 1] = sums[known] + exchange.restingActivity(known * SAMPLE_S);
      sumsK[known + 1] = sumsK[known] + exchange.restingTemperatureK();
    }
  }

  private void reserve(int index) {
    if (index >= sums.length) {
      int length = Math.max(index + 1, 2 * sums.length);
      sums = Arrays.copyOf(sums, length);
      sumsK = Arrays.copyOf(sumsK, length);
    }
  }
}
