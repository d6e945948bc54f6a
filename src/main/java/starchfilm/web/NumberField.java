package starchfilm.web;

import java.util.OptionalDouble;
import starchfilm.numerics.figures.Figures;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;

/**
 * A number of a form, in the unit its page shows.
 *
 * @param label what the page calls it
 * @param least the least allowed
 * @param most the most allowed
 * @param fix goes on after the ends: the unit, and what to do
 */
record NumberField(String key, String label, double least, double most, String fix) {
  /** What is written; empty where the form does not have it. */
  OptionalDouble in(Fields form) {
    if (!form.has(key)) {
      return OptionalDouble.empty();
    }
    String typed = form.text(key).replace(',', '.');
    if (typed.matches("[0-9]{1,4}(\\.[0-9]{1,4})?")) {
      double value = Double.parseDouble(typed);
      if (value >= least && value <= most) {
        return OptionalDouble.of(value);
      }
    }
    throw refused(form);
  }

  /** Says what was written, and what may be. */
  HttpError refused(Fields form) {
    String typed = form.text(key);
    return new HttpError(
        422,
        "%s: \"%s\" given, allowed %s to %s%s."
            .formatted(
                label,
                typed.length() > 20 ? typed.substring(0, 20) + "..." : typed,
                Figures.noted(least),
                Figures.noted(most),
                fix));
  }
}
