package starchfilm.files.notebook;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;

/** A typed amount as a trial file keeps it: a number with its digits, or a range. */
public final class TypedValue {
  private TypedValue() {}

  /**
   * What stands for an amount.
   *
   * @param amount the amount
   * @param unit the unit of the field
   * @param place where it was written
   * @return a number; an object with from and to where only a range is known
   */
  public static Located of(TypedAmount amount, String unit, Place place) {
    if (!amount.isRange()) {
      return new NumberValue(place, amount.in(unit));
    }
    List<BigDecimal> ends = amount.endsIn(unit);
    return new ObjectValue(place, Map.of(), List.of())
        .with("from", new NumberValue(place, ends.get(0)))
        .with("to", new NumberValue(place, ends.get(1)));
  }

  /**
   * The same in a sentence.
   *
   * @return such as {@code 300 mm} or {@code 25.5 to 34.5 ml}
   */
  static String words(TypedAmount amount, String unit) {
    if (!amount.isRange()) {
      return amount.in(unit).toPlainString() + " " + unit;
    }
    List<BigDecimal> ends = amount.endsIn(unit);
    return ends.get(0).toPlainString() + " to " + ends.get(1).toPlainString() + " " + unit;
  }
}
