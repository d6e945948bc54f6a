package starchfilm.cli;

import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Measure;
import starchfilm.files.amount.MistypedException;
import starchfilm.numerics.evidence.Estimate;

/**
 * Amounts out of the words of a command, each with what it is worth.
 *
 * <p>A weighing is worth the last digit typed: everything that rounds to it, {@code sd =
 * step/sqrt(12)} (JCGM 100:2008, F.2.2.1, recalled). A volume is worth {@link #JUG_RELATIVE_SD} of
 * itself.
 */
final class TypedAmounts {
  /** Relative standard uncertainty of a volume measured in a kitchen jug; judged, no source. */
  static final double JUG_RELATIVE_SD = 0.03;

  private static final String MASS_OR_VOLUME = "a mass or a volume, such as 250 g or 200 ml";
  private static final Pattern DECIMALS = Pattern.compile("[0-9]+[.,]([0-9]+)");
  private static final Pattern CONCENTRATION =
      Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*mol\\s*/\\s*l", Pattern.CASE_INSENSITIVE);
  private static final Pattern BARE = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
  private static final double MOL_PER_M3 = 1000;

  private TypedAmounts() {}

  /**
   * A weighed mass.
   *
   * @param option the option's name, for the sentence
   * @param text as typed
   * @return kg
   */
  static Estimate massKg(String option, String text) {
    return sentenced(option, text, typed -> weighed(Measure.mass(typed), typed));
  }

  /**
   * A mass, or a volume of known density.
   *
   * @param option the option's name, for the sentence
   * @param text as typed
   * @param kgPerM3 density of what was measured
   * @return kg
   */
  static Estimate massKg(String option, String text, double kgPerM3) {
    return sentenced(
        option,
        text,
        typed -> {
          Measure measure = massOrVolume(typed);
          if (measure instanceof Measure.Mass mass) {
            return weighed(mass, typed);
          }
          if (measure instanceof Measure.Volume volume) {
            double kg = volume.m3() * kgPerM3;
            return new Estimate(kg, JUG_RELATIVE_SD * kg);
          }
          throw new MistypedException(typed, MASS_OR_VOLUME, "write what was measured");
        });
  }

  static boolean isVolume(String option, String text) {
    return sentenced(option, text, typed -> massOrVolume(typed) instanceof Measure.Volume);
  }

  static double volumeM3(String option, String text) {
    return sentenced(option, text, typed -> Measure.volume(typed).m3());
  }

  static double lengthM(String option, String text) {
    return sentenced(option, text, typed -> Measure.length(typed).m());
  }

  static double share(String option, String text) {
    return sentenced(option, text, typed -> Measure.share(typed).fraction());
  }

  static double temperatureK(String option, String text) {
    return sentenced(option, text, typed -> Measure.temperature(typed).k());
  }

  static double number(String option, String text, String allowed) {
    return sentenced(
        option,
        text,
        typed -> {
          if (!BARE.matcher(typed.strip()).matches()) {
            throw new MistypedException(typed, allowed, "write one number without a unit");
          }
          return Double.parseDouble(typed.strip().replace(',', '.'));
        });
  }

  /** A concentration in mol/l (mol/m3). */
  static double molPerM3(String option, String text) {
    return sentenced(
        option,
        text,
        typed -> {
          Matcher matcher = CONCENTRATION.matcher(typed.strip());
          if (!matcher.matches()) {
            throw new MistypedException(
                typed, "a concentration, such as 0.5 mol/l", "write it with the unit mol/l");
          }
          return Double.parseDouble(matcher.group(1).replace(',', '.')) * MOL_PER_M3;
        });
  }

  static boolean isConcentration(String text) {
    return text.toLowerCase(Locale.ROOT).contains("mol");
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

  private static <T> T sentenced(String option, String text, Function<String, T> read) {
    try {
      return read.apply(text);
    } catch (MistypedException e) {
      throw CommandFailure.wrongInput(option + ": " + e.getMessage());
    }
  }
}
