package starchfilm.report.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Round places for the ticks of an axis: multiples of 1, 2 or 5 times a power of ten.
 *
 * <p>Source of the rule: Heckbert 1990, Nice numbers for graph labels, Graphics Gems, pp. 61-63
 * (recalled).
 */
public final class RoundTicks {
  private static final int[] STEPS = {1, 2, 5};

  private RoundTicks() {}

  /**
   * A round place on an axis.
   *
   * @param value where
   * @param label its figure, without more decimals than the step has
   */
  public record RoundTick(double value, String label) {}

  /**
   * The ticks of a linear axis.
   *
   * @param from lower end
   * @param to upper end, above {@code from}
   * @param atMost how many ticks there is room for; at least 2
   * @return ticks in order, all within the ends; the finest round step that leaves room
   */
  public static List<RoundTick> linear(double from, double to, int atMost) {
    if (!(to > from) || atMost < 2) {
      throw new IllegalArgumentException(
          "an axis needs a length and room for two ticks, not " + from + " to " + to);
    }
    int power = (int) Math.floor(Math.log10((to - from) / atMost)) - 1;
    while (true) {
      for (int step : STEPS) {
        List<RoundTick> ticks = multiples(from, to, step, power, atMost);
        if (ticks.size() <= atMost) {
          return ticks;
        }
      }
      power++;
    }
  }

  /**
   * The ticks of a logarithmic axis: 1, 2 and 5 times the powers of ten, or the powers alone.
   *
   * @param from lower end, above 0
   * @param to upper end, above {@code from}
   * @param atMost how many ticks there is room for; at least 2
   * @return ticks in order, all within the ends
   */
  public static List<RoundTick> logarithmic(double from, double to, int atMost) {
    if (!(from > 0 && to > from) || atMost < 2) {
      throw new IllegalArgumentException(
          "a logarithmic axis needs ends above 0 and in order, not " + from + " to " + to);
    }
    List<RoundTick> fine = logTicks(from, to, STEPS);
    return fine.size() <= atMost ? fine : logTicks(from, to, new int[] {1});
  }

  private static List<RoundTick> multiples(
      double from, double to, int step, int power, int atMost) {
    BigDecimal exactStep = BigDecimal.valueOf(step).scaleByPowerOfTen(power);
    double width = exactStep.doubleValue();
    // A hair of tolerance, so that an end that is itself round gets its tick.
    long first = (long) Math.ceil(from / width - 1e-9);
    long last = (long) Math.floor(to / width + 1e-9);
    List<RoundTick> ticks = new ArrayList<>();
    for (long n = first; n <= last && ticks.size() <= atMost; n++) {
      ticks.add(tick(exactStep.multiply(BigDecimal.valueOf(n))));
    }
    return ticks;
  }

  private static List<RoundTick> logTicks(double from, double to, int[] steps) {
    List<RoundTick> ticks = new ArrayList<>();
    int lastPower = (int) Math.floor(Math.log10(to));
    for (int power = (int) Math.floor(Math.log10(from)); power <= lastPower; power++) {
      for (int step : steps) {
        RoundTick tick = tick(BigDecimal.valueOf(step).scaleByPowerOfTen(power));
        if (tick.value() >= from * (1 - 1e-9) && tick.value() <= to * (1 + 1e-9)) {
          ticks.add(tick);
        }
      }
    }
    return ticks;
  }

  private static RoundTick tick(BigDecimal value) {
    return new RoundTick(
        value.doubleValue(), value.signum() == 0 ? "0" : value.toPlainString().replace('-', '−'));
  }
}
