package starchfilm.files.amount;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.PackedPatterns;
import starchfilm.numerics.evidence.Estimate;

/**
 * An amount as people type it: {@code 412 g}, {@code 1 1/2 cups}, {@code ~40 g}, {@code 40-50 g},
 * {@code 3 ± 0.5 mm}, {@code 2 heaped tbsp}, {@code 1 lb 4 oz}, {@code 1d 6h}.
 *
 * <p>All numbers are in the unit typed. What could be read in two ways is refused with a sentence
 * that says how to write it.
 *
 * @param text as typed
 * @param unit the unit
 * @param number the number typed; the middle of a range
 * @param low the least it may be
 * @param high the most it may be
 * @param step what the last digit typed is worth
 * @param between whether two ends were typed
 */
public record TypedAmount(
    String text,
    Unit unit,
    BigDecimal number,
    BigDecimal low,
    BigDecimal high,
    BigDecimal step,
    boolean between) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final Pattern GIVE_OR_TAKE = Pattern.compile("\u00b1|\\+/?-");

  /** An amount within a text, for who looks for one: fractions, ranges, spoons and all. */
  public static final String WITHIN =
      PackedPatterns.of(TypedAmount.class, "amounts.patterns").text("within");

  /**
   * Reads an amount that measures one of these.
   *
   * @param text what was typed
   * @param allowed what is allowed, for the sentence of a mistake
   * @param wanted what it may measure; empty for anything
   * @return the amount
   * @throws MistypedException where it cannot be read
   */
  public static TypedAmount read(String text, String allowed, List<Dimension> wanted) {
    return AmountReader.read(text, "", allowed, wanted);
  }

  /**
   * The same of one dimension.
   *
   * @param dimension what is measured
   * @param text what was typed
   * @return the amount
   * @throws MistypedException where it cannot be read
   */
  public static TypedAmount of(Dimension dimension, String text) {
    return read(text, dimension.allowed(), List.of(dimension));
  }

  /**
   * Reads an amount for a field that counts in a unit.
   *
   * @param unit the field's unit, which a bare number is in
   * @param text what was typed
   * @param also what it may measure beside what the unit does
   * @return the amount
   * @throws MistypedException where it cannot be read
   */
  public static TypedAmount inUnit(String unit, String text, Dimension... also) {
    String bare = unit.replace("\u00b0", "");
    List<Dimension> wanted = new ArrayList<>(List.of(also));
    wanted.add(Unit.named(bare).dimension());
    return AmountReader.read(text, bare, "a number in " + bare + ", such as 12.5 " + bare, wanted);
  }

  boolean isShare() {
    return unit.dimension() == Dimension.SHARE;
  }

  TypedAmount within(BigDecimal from, BigDecimal to) {
    return new TypedAmount(text, unit, number, from, to, step, between);
  }

  /** From another number to this one. */
  TypedAmount between(BigDecimal from, BigDecimal finer) {
    if (from.compareTo(number) > 0) {
      throw new MistypedException(text, "a range, the lower end first", "turn its ends round");
    }
    return new TypedAmount(
        text, unit, from.add(number).divide(TWO), from.multiply(unit.least()), high, finer, true);
  }

  /** True where more is known than a number: two ends, a rough number or a spoon. */
  public boolean isRange() {
    return low.compareTo(high) < 0;
  }

  /** True where it measures this. */
  public boolean is(Dimension dimension) {
    return unit.dimension() == dimension;
  }

  /** The amount in SI, the middle of a range. */
  public double si() {
    return unit.si(number);
  }

  /** The least it may be, in SI. */
  public double leastSi() {
    return unit.si(low);
  }

  /** The most it may be, in SI. */
  public double mostSi() {
    return unit.si(high);
  }

  /**
   * The amount where a range is of no use.
   *
   * @return in SI
   * @throws MistypedException where two ends were typed, or how far off it may be
   */
  public double one() {
    return single().si();
  }

  private TypedAmount single() {
    if (between || GIVE_OR_TAKE.matcher(text).find()) {
      throw new MistypedException(
          text, unit.dimension().allowed(), "a range is of no use here; write one number");
    }
    return this;
  }

  /**
   * The amount with what it is worth: its range, every place in it equally likely, or all that
   * rounds to the last digit typed, {@code sd = step/sqrt(12)} (JCGM 100:2008, F.2.2.1, recalled).
   * Nought is exact.
   *
   * @return in SI
   */
  public Estimate estimate() {
    if (isRange()) {
      return Estimate.between(leastSi(), mostSi());
    }
    double step = this.step.multiply(unit.factor()).doubleValue();
    return new Estimate(si(), number.signum() == 0 ? 0 : step / Math.sqrt(12));
  }

  /**
   * The number in another unit, with the digits typed: {@code 0,4120 kg} is {@code 412.0} g. The
   * last digit says how fine the scale was.
   *
   * @param name the unit
   * @return the number there
   * @throws MistypedException where two ends were typed
   */
  public BigDecimal in(String name) {
    return single().in(Unit.named(name), number);
  }

  /**
   * The same as a file keeps it.
   *
   * @param name the unit of the field
   * @param place where it was written
   * @return a number with its digits; an object with from and to where only a range is known
   */
  public Located written(String name, Place place) {
    Unit other = Unit.named(name);
    return isRange()
        ? new ObjectValue(place, Map.of(), List.of())
            .with("from", new NumberValue(place, in(other, low)))
            .with("to", new NumberValue(place, in(other, high)))
        : new NumberValue(place, in(name));
  }

  private BigDecimal in(Unit other, BigDecimal value) {
    BigDecimal there = unit.to(other, value);
    boolean kept = unit.keepsDigits(other) && there.scale() <= Math.max(6, value.scale());
    if (!kept) {
      BigDecimal worth = unit.to(other, step).subtract(unit.to(other, BigDecimal.ZERO)).abs();
      int places = worth.signum() == 0 ? 0 : worth.precision() - worth.scale() - 1;
      int extra = other.dimension() == Dimension.MASS && !isRange() ? 0 : 2;
      there =
          there
              .setScale(Math.max(0, Math.min(6, extra - places)), RoundingMode.HALF_UP)
              .stripTrailingZeros();
    }
    return there.scale() < 0 ? there.setScale(0) : there;
  }

  /**
   * A typed number in a unit.
   *
   * @param name the unit, which a bare number is in
   * @param text what was typed
   * @return the number there, its digits kept
   * @throws MistypedException where it is no such amount
   */
  public static BigDecimal number(String name, String text) {
    return inUnit(name, text).in(name);
  }
}
