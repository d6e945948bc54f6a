package starchfilm.web;

import java.util.List;
import java.util.Map;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.web.http.HttpError;

/** Where the glycerol of a trial to be poured comes from, chosen on a page. */
final class OriginChoice {
  /** The field's name in a form. */
  static final String FIELD = "origin";

  /** What may be chosen. */
  static final List<String> WORDS = FileWord.all(GlycerolOrigin.values());

  private OriginChoice() {}

  /** The text of a trial file with the choice of a form in it; without a choice as it was. */
  static String applied(String chosen, String text) throws NotWrittenException {
    if (chosen.isEmpty()) {
      return text;
    }
    if (!WORDS.contains(chosen)) {
      throw HttpError.malformed(
          "The glycerol comes from one of: " + String.join(", ", WORDS) + ".");
    }
    return FieldEdit.with(text, Map.of("recipe.glycerol.origin", chosen));
  }
}
