package starchfilm.request;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Measure;
import starchfilm.files.amount.MistypedException;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/**
 * Amounts as typed, each with what it is worth.
 *
 * <p>A weighing is worth the last digit typed: everything that rounds to it, {@code sd =
 * step/sqrt(12)} (JCGM 100:2008, F.2.2.1, recalled). A volume is worth {@link #JUG_RELATIVE_SD} of
 * itself. What cannot be read ends in a {@link MistypedException}.
 */
final class Quantities {
  /** Relative standard uncertainty of a volume measured in a kitchen jug; judged, no source. */
  private static final double JUG_RELATIVE_SD = 0.03;

  private static final String MASS_OR_VOLUME = "a mass or a volume, such as 250 g or 200 ml";
  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
  private static final Pattern DECIMALS = Pattern.compile("[0-9]+[.,]([0-9]+)");
  private static final Pattern CONCENTRATION =
      Pattern.compile(NUMBER + "\\s*mol\\s*/\\s*l", Pattern.CASE_INSENSITIVE);
  private static final Pattern MEGAPASCALS =
      Pattern.compile(NUMBER + "\\s*MPa", Pattern.CASE_INSENSITIVE);
  private static final Pattern SPEED =
      Pattern.compile(NUMBER + "\\s*(?:m/s)?", Pattern.CASE_INSENSITIVE);
  private static final Pattern RANGE =
      Pattern.compile(NUMBER + "\\s*%?\\s*(?:-|\u2013|to)\\s*" + NUMBER + "\\s*%");
  private static final Pattern BARE = Pattern.compile(NUMBER);
  private static final double MOL_PER_M3 = 1000;
  private static final double PA_PER_MPA = 1e6;

  private Quantities() {}

  /** A weighed mass (kg). */
  static Estimate massKg(String typed) {
    return weighed(Measure.mass(typed), typed);
  }

  /** A mass (kg), or a volume of something of this density (kg/m3). */
  static Estimate massKg(String typed, double kgPerM3) {
    Measure measure = massOrVolume(typed);
    if (measure instanceof Measure.Mass mass) {
      return weighed(mass, typed);
    }
    if (measure instanceof Measure.Volume) {
      return jugM3(typed).times(kgPerM3);
    }
    throw new MistypedException(typed, MASS_OR_VOLUME, "write what was measured");
  }

  static boolean isVolume(String typed) {
    return massOrVolume(typed) instanceof Measure.Volume;
  }

  static double volumeM3(String typed) {
    return Measure.volume(typed).m3();
  }

  /** A volume as a kitchen jug measures it (m3). */
  static Estimate jugM3(String typed) {
    double m3 = volumeM3(typed);
    return new Estimate(m3, JUG_RELATIVE_SD * m3);
  }

  static double lengthM(String typed) {
    return Measure.length(typed).m();
  }

  static double share(String typed) {
    return Measure.share(typed).fraction();
  }

  /** A share, or a range in which 8 cases of 10 lie. */
  static Estimate shareOrRange(String typed) {
    Matcher range = RANGE.matcher(typed.strip());
    if (!range.matches()) {
      return Estimate.exact(share(typed));
    }
    double low = share(range.group(1) + "%");
    double high = share(range.group(2) + "%");
    if (!(low <= high && high <= 1)) {
      throw new MistypedException(
          typed, "a range within 0 to 100 %, such as 66-79 %", "write the lower end first");
    }
    return new Estimate((low + high) / 2, (high - low) / (2 * Band.Z90));
  }

  static double temperatureK(String typed) {
    return Measure.temperature(typed).k();
  }

  static double spanS(String typed) {
    return Measure.span(typed).s();
  }

  static double speedMPerS(String typed) {
    return matched(SPEED, typed, "metres per second, such as 0.1", "write one number");
  }

  static double strengthPa(String typed) {
    return PA_PER_MPA
        * matched(MEGAPASCALS, typed, "a strength in MPa, such as 5MPa", "add the unit");
  }

  static double number(String typed, String allowed) {
    return matched(BARE, typed, allowed, "write one number without a unit");
  }

  /** A concentration in mol/l (mol/m3). */
  static double molPerM3(String typed) {
    return MOL_PER_M3
        * matched(
            CONCENTRATION,
            typed,
            "a concentration, such as 0.5 mol/l",
            "write it with the unit mol/l");
  }

  static boolean isConcentration(String typed) {
    return typed.toLowerCase(Locale.ROOT).contains("mol");
  }

  private static double matched(Pattern form, String typed, String allowed, String mend) {
    Matcher matcher = form.matcher(typed.strip());
    if (!matcher.matches()) {
      throw new MistypedException(typed, allowed, mend);
    }
    return Double.parseDouble(matcher.group(1).replace(',', '.'));
  }

  /** The whole list of units in the sentence would hide which of them make sense here. */
  private static Measure massOrVolume(String typed) {
    try {
      return Measure.parse(typed);
    } catch (MistypedException e) {
      throw new MistypedException(typed, MASS_OR_VOLUME, e.mend());
    }
  }

  private static Estimate weighed(Measure.Mass mass, String typed) {
    Matcher decimals = DECIMALS.matcher(typed);
    int places = decimals.find() ? decimals.group(1).length() : 0;
    double unitKg = typed.toLowerCase(Locale.ROOT).contains("kg") ? 1 : 1e-3;
    double stepKg = unitKg * Math.pow(10, -places);
    return new Estimate(mass.kg(), mass.kg() == 0 ? 0 : stepKg / Math.sqrt(12));
  }
}
