package starchfilm.files.roomlog;

import java.time.LocalDateTime;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One reading of a room log.
 *
 * @param time when
 * @param humidityPct relative humidity (%)
 * @param saidCelsius whether its cell says what its degrees are
 */
record LogReading(
    int line, LocalDateTime time, double airC, double humidityPct, boolean saidCelsius) {
  private static final Pattern UNIT = Pattern.compile("\\s*(\u00B0 ?[CF]|\u00B0|[CF]|%|% ?RH)$");
  private static final Pattern NUMBER_AND_UNIT = Pattern.compile("[0-9]\\s*(\u00B0|C|F|%)");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,6}(?:[.,]\\d{1,9})?");
  private static final Pattern FAHRENHEIT = Pattern.compile("[0-9]\\s*\u00B0? ?F$");
  private static final Set<String> NOTHING =
      Set.of("", "-", "--", "---", "nan", "n/a", "na", "null", "none", "err", "error");

  /** A number with point or comma, its unit perhaps behind it. */
  static OptionalDouble number(String cell) {
    boolean isBare = NUMBER.matcher(cell).matches();
    String bare = isBare ? cell : UNIT.matcher(cell).replaceFirst("").strip();
    return isBare || NUMBER.matcher(bare).matches()
        ? OptionalDouble.of(Double.parseDouble(bare.replace(',', '.')))
        : OptionalDouble.empty();
  }

  /** True where a cell says that it is degrees Fahrenheit. */
  static boolean isFahrenheit(String cell) {
    return FAHRENHEIT.matcher(cell).find();
  }

  /** True where a cell says what it is: degrees or per cent. */
  static boolean hasUnit(String cell) {
    return NUMBER_AND_UNIT.matcher(cell).find();
  }

  /** True where a logger says that it has no reading. */
  static boolean isNothing(String cell) {
    return NOTHING.contains(cell.toLowerCase(Locale.ROOT));
  }
}
