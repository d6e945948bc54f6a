package starchfilm.files.saving;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Fault;
import starchfilm.files.json.Located;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;

/**
 * Changes single fields of a trial file's text; everything else in it stays as it was written.
 *
 * <p>A field that is not there is added where something is typed; one that is emptied becomes
 * unknown, so that nothing is lost by a slip.
 */
public final class FieldEdit {
  private static final String STARCHES = "recipe.starch";

  private FieldEdit() {}

  /**
   * The text in each field.
   *
   * @param text the text of a trial file
   * @return by path, as a person would type it; empty for a field that is not there
   * @throws NotWrittenException where the text is no JSON
   */
  public static Map<String, String> shown(String text) throws NotWrittenException {
    Located root = TrialFileText.fields(text);
    Map<String, String> shown = new LinkedHashMap<>();
    for (FormField field : FormField.ALL) {
      shown.put(field.path(), root.shown(field.path()));
    }
    return shown;
  }

  /**
   * Changes the fields whose typed text differs from what stands there.
   *
   * @param text the text of a trial file
   * @param typed what was typed, by path; a field left out stays
   * @param moments reads the time of the pour as a note's is read
   * @return the changed text
   * @throws NotWrittenException where something typed cannot be read, with a fault by the path of
   *     each such field, or the text is no JSON object
   */
  public static String with(String text, Map<String, String> typed, MomentParser moments)
      throws NotWrittenException {
    NoteWords words = new NoteWords(moments, Optional.empty());
    Map<String, String> shown = shown(text);
    List<Fault> wrong = new ArrayList<>();
    Map<String, Located> changes = new LinkedHashMap<>();
    for (FormField field : FormField.ALL) {
      String was = shown.getOrDefault(field.path(), "");
      String is = typed.getOrDefault(field.path(), was).strip();
      if (typed.containsKey(field.path()) && !is.equals(was)) {
        try {
          changes.put(field.path(), words.value(field.field(), is));
        } catch (MistypedException e) {
          wrong.add(Fault.of("", field.path(), e.given(), e.allowed(), e.mend()));
        }
      }
    }
    if (!wrong.isEmpty()) {
      throw new NotWrittenException(wrong);
    }
    try {
      String changed = text;
      for (Map.Entry<String, Located> change : changes.entrySet()) {
        changed = withStarch(changed, change.getKey());
        changed = TextEdit.set(changed, change.getKey(), change.getValue());
      }
      boolean ofStarches = changes.keySet().stream().anyMatch(path -> path.startsWith(STARCHES));
      return ofStarches ? withoutNamelessStarches(changed) : changed;
    } catch (UnreadableFileException e) {
      throw NotWrittenException.because(java.nio.file.Path.of("the file"), e);
    }
  }

  private static List<Located> starches(String text) throws NotWrittenException {
    return TrialFileText.fields(text).entries(STARCHES);
  }

  /** With the row of the list of starches that a field belongs to, and those before it. */
  private static String withStarch(String text, String path)
      throws NotWrittenException, UnreadableFileException {
    String with = text;
    if (path.startsWith(STARCHES)) {
      int row = Character.digit(path.charAt(STARCHES.length() + 1), 10);
      for (int i = starches(text).size(); i <= row; i++) {
        with = TextEdit.append(with, STARCHES, Located.object());
      }
    }
    return with;
  }

  /** A row without a kind, or emptied of it, is no starch. */
  private static String withoutNamelessStarches(String text)
      throws NotWrittenException, UnreadableFileException {
    String without = text;
    List<Located> starches = starches(text);
    for (int i = starches.size() - 1; i >= 0; i--) {
      if (starches.get(i).shown("kind").isEmpty()) {
        without = TextEdit.remove(without, STARCHES + "." + i);
      }
    }
    return without;
  }
}
