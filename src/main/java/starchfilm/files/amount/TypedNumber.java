package starchfilm.files.amount;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * A typed amount in the unit of a file's field, its digits kept as typed: {@code 0,4120 kg} becomes
 * {@code 412.0} g. The last digit says how fine the scale was.
 */
public final class TypedNumber {
  /** How far the decimal point moves from each unit to the first of its kind. */
  private static final Map<String, Map<String, Integer>> SHIFTS =
      Map.of(
          "g", Map.of("mg", -3, "g", 0, "kg", 3),
          "ml", Map.of("ml", 0, "l", 3),
          "kg", Map.of("mg", -6, "g", -3, "kg", 0),
          "mm", Map.of("um", -3, "mm", 0, "cm", 1, "m", 3),
          "um", Map.of("um", 0, "mm", 3, "cm", 4, "m", 6),
          "C", Map.of("c", 0),
          "%", Map.of("%", 0),
          "N", Map.of("n", 0));

  private TypedNumber() {}

  /**
   * Whether typed amounts are read in a unit.
   *
   * @param unit the unit
   * @return true for the units of {@link #in}
   */
  public static boolean isUnit(String unit) {
    return SHIFTS.containsKey(unit);
  }

  /**
   * Reads a typed amount.
   *
   * @param unit the unit of the result: g, ml, kg, mm, um, C, % or N
   * @param text what was typed; a bare number is taken in this unit
   * @return the number in that unit
   * @throws MistypedException where the text is no such amount
   */
  public static BigDecimal in(String unit, String text) {
    Map<String, Integer> shifts = SHIFTS.get(unit);
    if (shifts == null) {
      throw new IllegalArgumentException("no typed numbers in " + unit);
    }
    String allowed = "a number in " + unit + ", such as 12.5 " + unit;
    MeasureParser.Part part = MeasureParser.part(text, text.strip(), allowed);
    String typedUnit =
        part.unit().isEmpty() ? unit.toLowerCase(java.util.Locale.ROOT) : part.unit();
    Integer shift = shifts.get(typedUnit);
    if (shift == null) {
      throw new MistypedException(text, allowed, "write it in " + unit);
    }
    BigDecimal moved = part.value().movePointRight(shift);
    return moved.scale() < 0 ? moved.setScale(0) : moved;
  }

  /**
   * Reads typed minutes.
   *
   * @param text such as {@code 12 min} or {@code 1h}; a bare number is minutes
   * @return minutes
   * @throws MistypedException where the text is no length of time
   */
  public static BigDecimal minutes(String text) {
    String typed = text.strip();
    double seconds = Measure.span(typed.matches("[0-9.,]+") ? typed + " min" : typed).s();
    return BigDecimal.valueOf(seconds)
        .divide(BigDecimal.valueOf(60), seconds % 60 == 0 ? 0 : 1, RoundingMode.HALF_UP);
  }
}
