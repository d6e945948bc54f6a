package starchfilm.request;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.notebook.Volumes;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/**
 * Amounts as typed, each with what it is worth: see {@link TypedAmount#estimate}. A volume is
 * besides worth what a kitchen jug is. What cannot be read ends in a {@link MistypedException}.
 */
final class Quantities {
  static final String MASS_OR_VOLUME = "a mass or a volume, such as 250 g or 200 ml";

  private static final Pattern BARE = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)");

  private Quantities() {}

  /** A weighed mass (kg). */
  static Estimate massKg(String typed) {
    return TypedAmount.of(Dimension.MASS, typed).estimate();
  }

  /** A mass (kg), or a volume of something of this density (kg/m3). */
  static Estimate massKg(String typed, double kgPerM3) {
    return massKg(typed, Estimate.exact(kgPerM3));
  }

  /** A mass (kg), or a volume of something whose density (kg/m3) is known so well. */
  static Estimate massKg(String typed, Estimate kgPerM3) {
    TypedAmount amount = massOrVolume(typed);
    return amount.is(Dimension.MASS) ? amount.estimate() : jugM3(amount).times(kgPerM3);
  }

  static boolean isVolume(String typed) {
    return massOrVolume(typed).is(Dimension.VOLUME);
  }

  static boolean isMassOrVolume(String typed) {
    try {
      massOrVolume(typed);
      return true;
    } catch (MistypedException neither) {
      return false;
    }
  }

  static TypedAmount massOrVolume(String typed) {
    return TypedAmount.read(typed, MASS_OR_VOLUME, List.of(Dimension.MASS, Dimension.VOLUME));
  }

  /**
   * The same of something whose share has a field of its own.
   *
   * @param share that field
   */
  static TypedAmount massOrVolume(EntryReader in, String typed, String share) {
    try {
      return massOrVolume(typed);
    } catch (MistypedException e) {
      throw typed.contains("%")
          ? new MistypedException(typed, e.allowed(), "write the per cent as " + in.quoted(share))
          : e;
    }
  }

  /** A trial with an amount: what goes into the pot is not always weighed. */
  static ObjectValue into(ObjectValue trial, String path, TypedAmount amount, Place place) {
    String volume = Volumes.field(path);
    return amount.is(Dimension.VOLUME)
        ? trial.without(path).with(volume, amount.written("ml", place))
        : trial.without(volume).with(path, amount.written("g", place));
  }

  /** A volume as a kitchen jug measures it (m3). */
  static Estimate jugM3(String typed) {
    return jugM3(TypedAmount.of(Dimension.VOLUME, typed));
  }

  private static Estimate jugM3(TypedAmount amount) {
    double sd = amount.isRange() ? amount.estimate().sd() : 0;
    return Volumes.jug(new Estimate(amount.si(), sd));
  }

  /** A share, or a range in which 8 cases of 10 lie. */
  static Estimate shareOrRange(String typed) {
    TypedAmount share = TypedAmount.of(Dimension.SHARE, typed);
    if (!share.isRange()) {
      return Estimate.exact(share.si());
    }
    if (share.mostSi() > 1) {
      throw new MistypedException(
          typed, "a range within 0 to 100 %, such as 66-79 %", "write the lower end first");
    }
    return new Estimate(share.si(), (share.mostSi() - share.leastSi()) / (2 * Band.Z90));
  }

  static double number(String typed, String allowed) {
    Matcher matcher = BARE.matcher(typed.strip());
    if (!matcher.matches()) {
      throw new MistypedException(typed, allowed, "write one number without a unit");
    }
    return Double.parseDouble(matcher.group(1).replace(',', '.'));
  }

  static boolean isConcentration(String typed) {
    return typed.toLowerCase(Locale.ROOT).contains("mol");
  }
}
