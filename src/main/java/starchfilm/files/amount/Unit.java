package starchfilm.files.amount;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import starchfilm.files.json.PackedText;
import starchfilm.numerics.evidence.Estimate;

/**
 * A unit that people write.
 *
 * <p>Inch, pound and ounce are exact (NIST Special Publication 811:2008, B.8, recalled), and so are
 * the spoons and cups of the United States, 14.79, 4.93 and 236.6 ml, and the metric ones of 15, 5
 * and 250 ml. Who writes no more than "cup" means either, so both lie in its range. How far a spoon
 * or a cup is filled is common practice, no source.
 *
 * @param dimension what it measures
 * @param name its first spelling
 * @param factor SI units in one of it
 * @param offset what is added after that; 0 but for temperatures
 * @param least of what it is filled with, the least share of one; 1 for whatever is read to a mark
 * @param most the same, at most
 * @param finest the last digit of a whole number is worth no more than this many of it
 */
public record Unit(
    Dimension dimension,
    String name,
    BigDecimal factor,
    BigDecimal offset,
    BigDecimal least,
    BigDecimal most,
    BigDecimal finest) {
  private static final Map<String, Unit> BY_SPELLING = table();

  /** A hundredth of a whole. */
  public static final Unit PER_CENT = named("%");

  /** What a letter stands for where the unit it usually means makes no sense. */
  private static final Map<String, String> INSTEAD = Map.of("m", "min");

  private static final Pattern IDLE = Pattern.compile("[\\s._-]|(?<=\\w)\\)");

  private static Map<String, Unit> table() {
    Map<String, Unit> units = new HashMap<>();
    for (String line : PackedText.of(Unit.class, "units.words").lines().skip(1).toList()) {
      String[] words = line.split(" ", -1);
      String[] scale = words[1].split("\\+", 2);
      boolean finest = words[2].startsWith("<");
      String[] fill =
          words[2].contains("..") ? words[2].split("\\.\\.", -1) : new String[] {"1", "1"};
      Unit unit =
          new Unit(
              Dimension.valueOf(words[0]),
              words[3],
              quotient(scale[0]),
              scale.length == 1 ? BigDecimal.ZERO : quotient(scale[1]),
              new BigDecimal(fill[0]),
              new BigDecimal(fill[1]),
              finest ? new BigDecimal(words[2].substring(1)) : BigDecimal.ONE);
      Arrays.stream(words).skip(3).forEach(spelling -> units.put(spelling, unit));
    }
    return Map.copyOf(units);
  }

  private static BigDecimal quotient(String written) {
    String[] parts = written.split("/", -1);
    BigDecimal number = new BigDecimal(parts[0]);
    return parts.length == 1
        ? number
        : number.divide(new BigDecimal(parts[1]), MathContext.DECIMAL128);
  }

  /** The unit a word means; one of the dimensions wanted, where it may mean several. */
  static Optional<Unit> of(String written, Collection<Dimension> wanted) {
    String spelling = IDLE.matcher(written.toLowerCase(Locale.ROOT)).replaceAll("");
    Unit usual = BY_SPELLING.get(spelling);
    Unit other = BY_SPELLING.get(INSTEAD.getOrDefault(spelling, ""));
    boolean isOther =
        other != null
            && wanted.contains(other.dimension)
            && (usual == null || !wanted.contains(usual.dimension));
    return Optional.ofNullable(isOther ? other : usual);
  }

  /** The unit a table or a file names. */
  static Unit named(String name) {
    return known(name).orElseThrow(() -> new IllegalArgumentException("no amounts in " + name));
  }

  /**
   * The unit a table or a file may name.
   *
   * @param name its name, such as {@code \u00b0C}
   * @return the unit; empty where amounts are not counted in it
   */
  public static Optional<Unit> known(String name) {
    return Optional.ofNullable(
        BY_SPELLING.get(name.toLowerCase(Locale.ROOT).replace("\u00b0", "")));
  }

  /**
   * A figure in this unit.
   *
   * @param si the figure in SI
   * @return the same here
   */
  public double of(double si) {
    return (si - offset.doubleValue()) / factor.doubleValue();
  }

  /**
   * An estimate in this unit.
   *
   * @param number the estimate
   * @return the same in SI
   */
  public Estimate si(Estimate number) {
    return number.times(factor.doubleValue()).plus(Estimate.exact(offset.doubleValue()));
  }

  /** True for what is filled by hand, such as a spoon. */
  boolean isFilled() {
    return least.compareTo(most) < 0;
  }

  double si(BigDecimal number) {
    return number.multiply(factor).add(offset).doubleValue();
  }

  /** The same amount in another unit of the dimension. */
  BigDecimal to(Unit other, BigDecimal number) {
    if (offset.compareTo(other.offset) == 0) {
      BigDecimal ratio = factor.divide(other.factor, MathContext.DECIMAL128).stripTrailingZeros();
      return number.multiply(ratio);
    }
    return number
        .multiply(factor)
        .add(offset)
        .subtract(other.offset)
        .divide(other.factor, MathContext.DECIMAL64);
  }

  /** True where one is a power of ten times the other, so that digits may be kept. */
  boolean keepsDigits(Unit other) {
    return factor
            .divide(other.factor, MathContext.DECIMAL128)
            .stripTrailingZeros()
            .unscaledValue()
            .equals(BigInteger.ONE)
        && offset.compareTo(other.offset) == 0;
  }
}
