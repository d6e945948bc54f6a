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
 */
record LogReading(int line, LocalDateTime time, double airC, double humidityPct) {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,6}(?:[.,]\\d{1,9})?");
  private static final Set<String> NOTHING =
      Set.of("", "-", "--", "---", "nan", "n/a", "na", "null", "none", "err", "error");

  /** A number with point or comma, its unit perhaps behind it. */
  static OptionalDouble number(String cell) {
    String bare = cell.replaceFirst("\\s*(\u00B0C|\u00B0|C|%|% ?RH)$", "").strip();
    return NUMBER.matcher(bare).matches()
        ? OptionalDouble.of(Double.parseDouble(bare.replace(',', '.')))
        : OptionalDouble.empty();
  }

  /** True where a logger says that it has no reading. */
  static boolean isNothing(String cell) {
    return NOTHING.contains(cell.toLowerCase(Locale.ROOT));
  }
}
