package starchfilm.files.amount;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The grammar of typed amounts: {@code number unit}, and {@code 1d 6h 30min} for spans. */
final class MeasureParser {
  private static final String KNOWN_UNITS = "mg g kg ml l um mm cm m cm2 m2 C min h d % N";
  private static final double MAX_LENGTH = 60;

  private static final Pattern ONE =
      Pattern.compile("([+-]?)([0-9][0-9.,']*)\\s*([^0-9\\s.,+-][^\\s0-9]*[23]?)?");
  private static final Pattern SPAN_PARTS =
      Pattern.compile("(?:[0-9][0-9.,]*\\s*[a-zA-Z]+\\s*){2,}");
  private static final Pattern PLAIN = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
  private static final Pattern PERHAPS_GROUPED = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

  /**
   * Every unit that is read, in the spellings people type; letters' case counts only for m and M.
   */
  private static final Map<String, DoubleFunction<Measure>> UNITS =
      Map.ofEntries(
          Map.entry("mg", v -> new Measure.Mass(v * 1e-6)),
          Map.entry("g", v -> new Measure.Mass(v * 1e-3)),
          Map.entry("kg", v -> new Measure.Mass(v)),
          Map.entry("ml", v -> new Measure.Volume(v * 1e-6)),
          Map.entry("l", v -> new Measure.Volume(v * 1e-3)),
          Map.entry("um", v -> new Measure.Length(v * 1e-6)),
          Map.entry("mm", v -> new Measure.Length(v * 1e-3)),
          Map.entry("cm", v -> new Measure.Length(v * 1e-2)),
          Map.entry("m", v -> new Measure.Length(v)),
          Map.entry("cm2", v -> new Measure.Area(v * 1e-4)),
          Map.entry("m2", v -> new Measure.Area(v)),
          Map.entry("c", v -> new Measure.Temperature(v + ZERO_CELSIUS_K)),
          Map.entry("min", v -> new Measure.Span(v * 60)),
          Map.entry("h", v -> new Measure.Span(v * 3600)),
          Map.entry("d", v -> new Measure.Span(v * 86_400)),
          Map.entry("%", v -> new Measure.Share(v / 100)),
          Map.entry("n", v -> new Measure.Force(v)));

  /** Other spellings of the same units. */
  private static final Map<String, String> SPELLINGS =
      Map.ofEntries(
          Map.entry("gram", "g"),
          Map.entry("grams", "g"),
          Map.entry("\u00B5m", "um"),
          Map.entry("\u03BCm", "um"),
          Map.entry("cm\u00B2", "cm2"),
          Map.entry("m\u00B2", "m2"),
          Map.entry("\u00B0c", "c"),
          Map.entry("minute", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hour", "h"),
          Map.entry("hours", "h"),
          Map.entry("day", "d"),
          Map.entry("days", "d"),
          Map.entry("pct", "%"),
          Map.entry("percent", "%"));

  private MeasureParser() {}

  static <M extends Measure> M parse(String text, Class<M> wanted, String allowed) {
    Measure measure = parse(text, allowed);
    if (!wanted.isInstance(measure)) {
      throw new MistypedException(text, allowed, "write it with one of these units");
    }
    return wanted.cast(measure);
  }

  static Measure parse(String text) {
    return parse(text, "a number with one of the units " + KNOWN_UNITS);
  }

  private static Measure parse(String text, String allowed) {
    String typed = text.strip();
    if (typed.isEmpty() || typed.length() > MAX_LENGTH) {
      throw new MistypedException(text, allowed, "write one number with its unit");
    }
    if (SPAN_PARTS.matcher(typed).matches()) {
      return spanOfParts(text, typed, allowed);
    }
    return one(text, typed, allowed);
  }

  private static Measure spanOfParts(String text, String typed, String allowed) {
    double seconds = 0;
    Matcher part = Pattern.compile("[0-9][0-9.,]*\\s*[a-zA-Z]+").matcher(typed);
    while (part.find()) {
      if (!(one(text, part.group(), allowed) instanceof Measure.Span span)) {
        throw new MistypedException(text, allowed, "only times are written in several parts");
      }
      seconds += span.s();
    }
    return new Measure.Span(seconds);
  }

  /**
   * A number and its unit.
   *
   * @param value the number as typed
   * @param unit the unit, small, in its first spelling; empty for none
   */
  record Part(BigDecimal value, String unit) {}

  private static Measure one(String text, String typed, String allowed) {
    Part part = part(text, typed, allowed);
    if (part.unit().isEmpty()) {
      throw new MistypedException(text, allowed, "add the unit");
    }
    DoubleFunction<Measure> of = UNITS.get(part.unit());
    if (of == null) {
      throw new MistypedException(text, allowed, "the unit " + part.unit() + " is not known here");
    }
    return of.apply(part.value().doubleValue());
  }

  static Part part(String text, String typed, String allowed) {
    Matcher matcher = ONE.matcher(typed);
    if (typed.length() > MAX_LENGTH || !matcher.matches()) {
      throw new MistypedException(text, allowed, "write one number with its unit");
    }
    String unit = matcher.group(3) == null ? "" : matcher.group(3).toLowerCase(Locale.ROOT);
    BigDecimal value = number(text, matcher.group(2), allowed);
    return new Part(
        matcher.group(1).equals("-") ? value.negate() : value, SPELLINGS.getOrDefault(unit, unit));
  }

  private static BigDecimal number(String text, String digits, String allowed) {
    if (PERHAPS_GROUPED.matcher(digits).matches()) {
      String[] halves = digits.split(",", -1);
      throw new MistypedException(
          text,
          allowed,
          "this could be "
              + halves[0]
              + "."
              + halves[1]
              + " or "
              + halves[0]
              + halves[1]
              + "; write it with a point or without the comma");
    }
    if (!PLAIN.matcher(digits).matches()) {
      throw new MistypedException(
          text, allowed, "write the number with one point or comma and no grouping");
    }
    return new BigDecimal(digits.replace(',', '.'));
  }
}
