package starchfilm.web;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.findings.Allowed;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;

/**
 * A number of a form, in the unit its page shows.
 *
 * @param label what the page calls it
 * @param allowed between which ends, in that unit
 */
record NumberField(String key, String label, Allowed allowed) {
  private static final Pattern DIGITS = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,4})?");

  /** What is written; empty where the form does not have it. */
  OptionalDouble in(Fields form) {
    if (!form.has(key)) {
      return OptionalDouble.empty();
    }
    String typed = form.text(key).replace(',', '.');
    double value = DIGITS.matcher(typed).matches() ? Double.parseDouble(typed) : Double.NaN;
    if (!allowed.contains(value)) {
      throw refused(form);
    }
    return OptionalDouble.of(value);
  }

  /** Says what was written, and what may be. */
  HttpError refused(Fields form) {
    MistypedException why = new MistypedException(form.text(key), allowed.words(), allowed.mend());
    return new HttpError(422, label + ": " + why.getMessage() + ".");
  }
}
