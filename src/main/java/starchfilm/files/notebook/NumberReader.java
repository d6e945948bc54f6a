package starchfilm.files.notebook;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Unit;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.numerics.evidence.Estimate;

/** Reads the numbers of a trial file, and what people write in their place. */
record NumberReader(Findings findings) {
  private static final Pattern WITH_UNIT = Pattern.compile("(?s).*\\d.*[^\\d\\s.,].*");
  private static final Pattern TYPED_NUMBER = Pattern.compile("\\s*(-?\\d+(?:[.,]\\d+)?)\\s*");

  /** An amount in quotes with its unit, as people type it, is read as what it says. */
  Located understood(Located given, TrialField field) {
    if (!(given instanceof TextValue text) || !hasUnit(text, field)) {
      return given;
    }
    try {
      Located read = FieldInput.of(field, text.text(), given.place());
      findings.notice(
          given.place(), text.quoted() + " read as " + read.shown() + " " + field.unit());
      return read;
    } catch (MistypedException e) {
      return given;
    }
  }

  private static boolean hasUnit(TextValue text, TrialField field) {
    return Unit.known(field.unit()).isPresent() && WITH_UNIT.matcher(text.text()).matches();
  }

  /** Whether a number lies in the range of its field; a fault where it does not. */
  boolean checked(NumberValue number, TrialField field) {
    Allowed allowed = field.allowed().orElseThrow();
    double value = number.value();
    if (field.kind() == ValueKind.COUNT && value != Math.rint(value)) {
      findings.fault(number, "a whole number, " + allowed.words(), allowed.mend());
      return false;
    }
    if (allowed.isFractionByMistake(value)) {
      String percent =
          new BigDecimal(number.literal()).movePointRight(2).stripTrailingZeros().toPlainString();
      findings.fault(
          number,
          allowed.words(),
          "this looks like a fraction; write " + percent + " for " + percent + " %");
      return false;
    }
    if (!allowed.contains(value)) {
      findings.fault(number, allowed.words(), allowed.mend());
      return false;
    }
    return true;
  }

  /** Tells that something is no number, nor what else may stand there. */
  void refuse(Located value, TrialField field) {
    String words = field.allowed().orElseThrow().words();
    boolean isAmount = field.kind() == ValueKind.AMOUNT;
    String orElse = isAmount ? ", a range {\"from\": .., \"to\": ..} or \"unknown\"" : "";
    findings.fault(value, "a number from " + words + orElse, mend(value, field));
  }

  private static String mend(Located value, TrialField field) {
    if (value instanceof TextValue text) {
      Matcher typed = TYPED_NUMBER.matcher(text.text());
      if (typed.matches()) {
        return "write the number alone, without quotes: " + typed.group(1).replace(',', '.');
      }
      if (hasUnit(text, field)) {
        try {
          FieldInput.of(field, text.text());
        } catch (MistypedException e) {
          return e.mend();
        }
      }
      if (text.text().strip().toLowerCase(Locale.ROOT).equals(TrialField.UNKNOWN)) {
        return "write \"unknown\" in small letters";
      }
    }
    if (value instanceof WordValue word && word.flag().isEmpty()) {
      return "leave the field out, or write \"unknown\"";
    }
    return field.mend();
  }

  /** A figure in the unit of its field, in SI. */
  static Estimate si(TrialField field, Estimate inUnit) {
    Optional<Unit> unit = Unit.known(field.unit());
    return unit.map(known -> known.si(inUnit)).orElse(inUnit);
  }
}
