package starchfilm.web;

import java.util.List;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.request.TrialQuestion;
import starchfilm.web.http.HttpError;

/** Where the glycerol of a trial to be poured comes from, chosen on a page. */
final class OriginChoice {
  /** The field's name in a form. */
  static final String FIELD = "origin";

  /** What may be chosen. */
  static final List<String> WORDS = FileWord.all(GlycerolOrigin.values());

  private OriginChoice() {}

  /** A trial with the choice of a form in it; without a choice as it was. */
  static TrialQuestion.Base applied(String chosen, TrialQuestion.Base trial)
      throws NotWrittenException {
    if (chosen.isEmpty()) {
      return trial;
    }
    if (!WORDS.contains(chosen)) {
      throw HttpError.malformed(
          "The glycerol comes from one of: " + String.join(", ", WORDS) + ".");
    }
    return trial.with("recipe.glycerol.origin", chosen);
  }
}
