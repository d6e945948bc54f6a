package starchfilm.files.roomlog;

import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One reading of a room log.
 *
 * @param time when
 * @param isByTheWall whether its time is one that a clock on the wall showed
 * @param humidityPct relative humidity (%)
 * @param saidCelsius whether its cell says what its degrees are
 */
record LogReading(
    int line,
    Instant time,
    boolean isByTheWall,
    double airC,
    double humidityPct,
    boolean saidCelsius) {
  private static final Pattern FIGURE =
      Pattern.compile("([+-]?\\d{1,6}(?:[.,]\\d{1,9})?)\\s*(\u00B0 ?[CF]|\u00B0|[CF]|%|% ?RH)?");
  private static final Set<String> NOTHING =
      Set.of("", "-", "--", "---", "nan", "n/a", "na", "null", "none", "err", "error");

  /** A number with point or comma, its unit perhaps behind it. */
  static OptionalDouble number(String cell) {
    Matcher figure = FIGURE.matcher(cell);
    return figure.matches()
        ? OptionalDouble.of(Double.parseDouble(figure.group(1).replace(',', '.')))
        : OptionalDouble.empty();
  }

  /** The unit behind a number: of degrees or per cent; empty where there is none. */
  static String unit(String cell) {
    Matcher figure = FIGURE.matcher(cell);
    return figure.matches() ? Objects.requireNonNullElse(figure.group(2), "") : "";
  }

  /** True where a logger says that it has no reading. */
  static boolean isNothing(String cell) {
    return NOTHING.contains(cell.toLowerCase(Locale.ROOT));
  }
}
