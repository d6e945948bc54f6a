package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;

/**
 * Changes single fields of a trial file's text; everything else in it stays as it was written.
 *
 * <p>A field that is not there is added where something is typed; one that is emptied becomes
 * unknown, so that nothing is lost by a slip.
 */
public final class FieldEdit {
  private static final String STARCH = "recipe.starch.";

  private FieldEdit() {}

  /** Fields that cannot be read, each with its sentence. */
  public static final class MistypedFields extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Map<String, String> sentences;

    MistypedFields(Map<String, String> sentences) {
      super(String.join(" ", sentences.values()));
      this.sentences = Map.copyOf(sentences);
    }

    /**
     * What is wrong.
     *
     * @return a sentence by the path of its field
     */
    public Map<String, String> sentences() {
      return sentences;
    }
  }

  /**
   * What stands in each field.
   *
   * @param text the text of a trial file
   * @return by path, as a person would type it; empty for a field that is not there
   * @throws NotWrittenException where the text is no JSON
   */
  public static Map<String, String> shown(String text) throws NotWrittenException {
    JsonNode root = TrialTree.of(text);
    Map<String, String> shown = new LinkedHashMap<>();
    for (FormField field : FormField.ALL) {
      shown.put(field.path(), FieldInput.shown(at(root, field.path())));
    }
    return shown;
  }

  /**
   * Changes the fields whose typed text differs from what stands there.
   *
   * @param text the text of a trial file
   * @param typed what was typed, by path; a field left out stays
   * @return the changed text
   * @throws MistypedFields where something typed cannot be read
   * @throws NotWrittenException where the text is no JSON object
   */
  public static String with(String text, Map<String, String> typed) throws NotWrittenException {
    Map<String, String> shown = shown(text);
    Map<String, String> wrong = new LinkedHashMap<>();
    ArrayNode starches = starches(TrialTree.of(text));
    Map<String, JsonNode> ofStarches = new LinkedHashMap<>();
    String changed = text;
    for (FormField field : FormField.ALL) {
      String is = typed.getOrDefault(field.path(), "").strip();
      String was = shown.getOrDefault(field.path(), "");
      if (!typed.containsKey(field.path()) || is.equals(was)) {
        continue;
      }
      try {
        JsonNode value = FieldInput.of(field.field(), is);
        if (field.path().startsWith(STARCH)) {
          putStarch(starches, field.path(), value);
          ofStarches.put(field.path(), value);
        } else {
          changed = TextEdit.set(changed, List.of(field.path().split("\\.", -1)), value);
        }
      } catch (MistypedException e) {
        wrong.put(field.path(), e.getMessage() + ".");
      } catch (UnreadableFileException e) {
        throw NotWrittenException.because(java.nio.file.Path.of("the file"), e);
      }
    }
    if (!wrong.isEmpty()) {
      throw new MistypedFields(wrong);
    }
    return ofStarches.isEmpty() ? changed : withStarches(changed, starches, ofStarches);
  }

  /** Field by field, so that the list stays laid out as it is; anew where it has other entries. */
  private static String withStarches(String text, ArrayNode starches, Map<String, JsonNode> changes)
      throws NotWrittenException {
    int typed = starches.size();
    for (int i = starches.size() - 1; i >= 0; i--) {
      // A row without a kind, or emptied of it, is no starch.
      if (starches.get(i).path("kind").asText("").isEmpty()) {
        starches.remove(i);
      }
    }
    JsonNode was = TrialTree.of(text).path("recipe").path("starch");
    boolean oneAlone = was.isObject() && typed == 1;
    try {
      if (starches.size() < typed || !(was.isArray() || oneAlone)) {
        return TextEdit.set(text, List.of("recipe", "starch"), starches);
      }
      String changed = text;
      for (Map.Entry<String, JsonNode> change : changes.entrySet()) {
        String path = oneAlone ? change.getKey().replace(".0.", ".") : change.getKey();
        changed = TextEdit.set(changed, List.of(path.split("\\.", -1)), change.getValue());
      }
      return changed;
    } catch (UnreadableFileException e) {
      throw NotWrittenException.because(java.nio.file.Path.of("the file"), e);
    }
  }

  private static void putStarch(ArrayNode starches, String path, JsonNode value) {
    String[] names = path.split("\\.", -1);
    int index = Integer.parseInt(names[2]);
    while (starches.size() <= index) {
      starches.addObject();
    }
    if (starches.get(index) instanceof ObjectNode starch) {
      starch.set(names[3], value);
    }
  }

  private static ArrayNode starches(JsonNode root) {
    JsonNode there = root.path("recipe").path("starch");
    if (there instanceof ArrayNode list) {
      return list;
    }
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    if (there.isObject()) {
      list.add(there);
    }
    return list;
  }

  private static JsonNode at(JsonNode root, String path) {
    JsonNode node = root;
    for (String name : path.split("\\.", -1)) {
      boolean isIndex = Character.isDigit(name.charAt(0));
      if (isIndex && node.isObject()) {
        // One starch may stand without a list around it.
        node = name.equals("0") ? node : MissingNode.getInstance();
      } else {
        node = isIndex ? node.path(Integer.parseInt(name)) : node.path(name);
      }
    }
    return node;
  }
}
