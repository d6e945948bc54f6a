package starchfilm.files.notebook;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.amount.Unit;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.numerics.evidence.Estimate;

/** Reads the numbers of a trial file, and what people write in their place. */
record NumberReader(Findings findings) {
  /** The word for an amount that nobody knows. */
  static final String UNKNOWN = "unknown";

  private static final Pattern WITH_UNIT = Pattern.compile("(?s).*\\d.*[^\\d\\s.,].*");
  private static final Pattern TYPED_NUMBER = Pattern.compile("\\s*(-?\\d+(?:[.,]\\d+)?)\\s*");

  /** A number and nothing else, in SI. */
  OptionalDouble read(Located given, TrialField field) {
    Allowed allowed = field.allowed().orElseThrow();
    Located value = understood(given, allowed.unit());
    if (value instanceof NumberValue number) {
      boolean isPart =
          field.kind() == TrialField.ValueKind.COUNT && number.value() != Math.rint(number.value());
      if (isPart) {
        findings.fault(number, "a whole number, " + allowed.words(), allowed.mend());
      }
      return !isPart && checked(number, allowed)
          ? OptionalDouble.of(si(field, Estimate.exact(number.value())).value())
          : OptionalDouble.empty();
    }
    refuse(value, allowed, "");
    return OptionalDouble.empty();
  }

  /** An amount in quotes with its unit, as people type it, is read as what it says. */
  Located understood(Located given, String unit) {
    if (!(given instanceof TextValue text) || !hasUnit(text, unit)) {
      return given;
    }
    try {
      Located read = TypedAmount.inUnit(unit, text.text()).written(unit, given.place());
      findings.notice(given.place(), text.quoted() + " read as " + read.shown() + " " + unit);
      return read;
    } catch (MistypedException e) {
      return given;
    }
  }

  private static boolean hasUnit(TextValue text, String unit) {
    return Unit.known(unit).isPresent() && WITH_UNIT.matcher(text.text()).matches();
  }

  /** Whether a number lies in the range of its field; a fault where it does not. */
  boolean checked(NumberValue number, Allowed allowed) {
    double value = number.value();
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
  void refuse(Located value, Allowed allowed, String orElse) {
    findings.fault(value, "a number from " + allowed.words() + orElse, mendOfText(value, allowed));
  }

  private static String mendOfText(Located value, Allowed allowed) {
    if (value instanceof TextValue text) {
      Matcher typed = TYPED_NUMBER.matcher(text.text());
      if (typed.matches()) {
        return "write the number alone, without quotes: " + typed.group(1).replace(',', '.');
      }
      if (hasUnit(text, allowed.unit())) {
        try {
          return "write " + TypedAmount.inUnit(allowed.unit(), text.text()).in(allowed.unit());
        } catch (MistypedException e) {
          return e.mend();
        }
      }
      if (text.text().strip().toLowerCase(Locale.ROOT).equals(UNKNOWN)) {
        return "write \"unknown\" in small letters";
      }
    }
    if (value instanceof WordValue word && word.flag().isEmpty()) {
      return "leave the field out, or write \"unknown\"";
    }
    return allowed.mend();
  }

  /** A figure in the unit of its field, in SI. */
  static Estimate si(TrialField field, Estimate inUnit) {
    Optional<Unit> unit = Unit.known(field.unit());
    return unit.map(known -> known.si(inUnit)).orElse(inUnit);
  }
}
