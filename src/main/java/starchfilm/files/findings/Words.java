package starchfilm.files.findings;

import static starchfilm.numerics.units.Units.HOUR_S;
import static starchfilm.numerics.units.Units.MINUTE_S;

import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Plural;

/** Numbers as they are put into a sentence about a trial file. */
public final class Words {
  private Words() {}

  /**
   * A number in plain digits.
   *
   * @param value the number
   * @return at most three figures, no exponent
   */
  public static String number(double value) {
    return Figures.of(value, 3);
  }

  /**
   * A span of time.
   *
   * @param seconds how long (s)
   * @return seconds, minutes, hours, or days if it is long
   */
  public static String span(double seconds) {
    if (seconds < MINUTE_S) {
      return Plural.of(Math.round(seconds), "second");
    }
    double hours = seconds / HOUR_S;
    if (hours < 1) {
      return Plural.of(Math.round(seconds / MINUTE_S), "minute");
    }
    return hours < 100 ? number(hours) + " h" : number(hours / 24) + " days";
  }

  /**
   * A mass in grams.
   *
   * @param kg the mass (kg)
   * @return the figure; of a rectangle both ends
   */
  public static String grams(Estimate kg) {
    return range(kg, 1000) + " g";
  }

  /**
   * A mass in grams.
   *
   * @param kg the mass (kg)
   * @return the figure
   */
  public static String grams(double kg) {
    return number(kg * 1000) + " g";
  }

  /**
   * A length in millimetres.
   *
   * @param metres the length (m)
   * @return the figure; of a rectangle both ends
   */
  public static String millimetres(Estimate metres) {
    return range(metres, 1000) + " mm";
  }

  /**
   * A fraction in per cent.
   *
   * @param fraction the fraction, 0 to 1
   * @return the figure; of a rectangle both ends
   */
  public static String percent(Estimate fraction) {
    return range(fraction, 100) + " %";
  }

  /**
   * Returns how uncertain what is left over is.
   *
   * @param fraction the fraction that is taken away, below 1
   * @return the relative standard uncertainty of the rest, in per cent
   */
  public static String percentSpread(Estimate fraction) {
    return number(100 * fraction.sd() / (1 - fraction.value())) + " %";
  }

  private static String range(Estimate estimate, double factor) {
    double half = estimate.sd() * Math.sqrt(12) / 2;
    if (half == 0) {
      return number(estimate.value() * factor);
    }
    return number((estimate.value() - half) * factor)
        + " to "
        + number((estimate.value() + half) * factor);
  }
}
