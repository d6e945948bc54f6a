package starchfilm.files.notebook;

import java.math.BigDecimal;
import java.util.List;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;

/** The text a person types for a field of a trial file, as the file keeps it. */
public final class FieldInput {
  private FieldInput() {}

  /**
   * The value typed, as the file keeps it.
   *
   * @param typed what was typed; of an amount a number, a range such as {@code 5 to 7}, or {@code
   *     unknown}, which an empty field means too
   * @throws MistypedException where it cannot be read
   */
  public static Located of(TrialField field, String typed) {
    return of(field, typed, Place.of(""));
  }

  /**
   * The same at a place where a fault of it is told.
   *
   * @param field the field
   * @param typed as above
   * @param place the place
   * @return the value
   */
  public static Located of(TrialField field, String typed, Place place) {
    String unit = field.unit();
    return switch (field.kind()) {
      case AMOUNT ->
          typed.isEmpty() || isUnknown(typed)
              ? new TextValue(place, TrialField.UNKNOWN)
              : TypedAmount.inUnit(unit, typed).written(unit, place);
      case NUMBER -> new NumberValue(place, TypedAmount.number(unit, typed));
      case COUNT -> new NumberValue(place, count(typed, field.allowed().orElseThrow()));
      case CHOICE -> new TextValue(place, choice(typed, field));
      default -> new TextValue(place, typed);
    };
  }

  /** Returns whether somebody says of an amount that it is unknown. */
  public static boolean isUnknown(String typed) {
    return typed.strip().equalsIgnoreCase(TrialField.UNKNOWN) || typed.strip().equals("?");
  }

  private static BigDecimal count(String typed, Allowed allowed) {
    if (!typed.matches("[0-9]{1,4}") || !allowed.contains(Integer.parseInt(typed))) {
      throw new MistypedException(typed, allowed.words(), allowed.mend());
    }
    return new BigDecimal(typed);
  }

  /** An emptied field of a form is no choice, which its reader tells. */
  private static String choice(String typed, TrialField field) {
    return typed.isEmpty() ? typed : KnownName.find(typed, field.choices(), List::of);
  }
}
