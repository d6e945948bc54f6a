package starchfilm.advice;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;
import static starchfilm.numerics.units.Units.MINUTE_S;

import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Figures;
import starchfilm.numerics.units.Units;

/** Figures as they stand in a sentence of advice: two that count, in the reader's units. */
final class Told {

  /** Up to here hours are the better unit (s). */
  private static final double HOURS_UP_TO_S = 2 * DAY_S;

  private static final int TWO = 2;

  private Told() {}

  /** A number to two figures. */
  static String number(double value) {
    return Figures.of(value, TWO);
  }

  /** A ratio in whole per cent, with one decimal below 10 %. */
  static String percent(double ratio) {
    return number(100 * ratio) + " %";
  }

  /** How many of a hundred likely cases; never 0 or 100, which nobody knows. */
  static String chance(double probability) {
    double cases = Math.rint(100 * probability);
    if (cases < 1) {
      return "fewer than 1 of 100";
    }
    return (cases > 99 ? "more than 99" : Figures.of(cases, TWO)) + " of 100";
  }

  /** A plasticiser level in grams to a hundred grams of dry starch, without the rest. */
  static String level(double glycerolPerStarch) {
    return number(100 * glycerolPerStarch) + " g";
  }

  static String millimetres(double metres) {
    return number(1e3 * metres) + " mm";
  }

  static String micrometres(double metres) {
    return number(1e6 * metres) + " µm";
  }

  static String celsius(double kelvin) {
    return degrees(kelvin) + " °C";
  }

  static String degrees(double kelvin) {
    return Long.toString(Math.round(kelvin - Units.ZERO_CELSIUS_K));
  }

  static String grams(double kg) {
    return Figures.grams(kg) + " g";
  }

  static String minutes(double seconds) {
    return number(seconds / MINUTE_S) + " min";
  }

  /** A length of time in hours or days; "never" for infinity. */
  static String span(double seconds) {
    if (Double.isInfinite(seconds)) {
      return "never";
    }
    return seconds < HOURS_UP_TO_S
        ? number(seconds / HOUR_S) + " hours"
        : number(seconds / DAY_S) + " days";
  }

  /** A forecast length of time with its range. */
  static String span(Band seconds) {
    if (Double.isInfinite(seconds.middle())) {
      return Double.isInfinite(seconds.low()) ? "never" : span(seconds.low()) + " to never";
    }
    double unit = seconds.middle() < HOURS_UP_TO_S ? HOUR_S : DAY_S;
    String high =
        Double.isInfinite(seconds.high()) ? " to never" : "–" + number(seconds.high() / unit);
    return span(seconds.middle()) + " (" + number(seconds.low() / unit) + high + ")";
  }

  /** A forecast figure with its range, scaled to the reader's unit. */
  static String band(Band si, double scale, String unit) {
    Band shown = si.times(scale);
    return number(shown.middle())
        + unit
        + " ("
        + number(shown.low())
        + "–"
        + number(shown.high())
        + ")";
  }
}
