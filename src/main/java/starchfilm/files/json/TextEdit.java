package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Changes a JSON text in one place and leaves every other character as its writer left it: fields
 * the program does not know, their order, the layout, the digits.
 */
public final class TextEdit {
  private static final String STEP = "  ";
  private static final ObjectWriter ONE_LINE =
      new ObjectMapper()
          .writer(printer())
          .with(com.fasterxml.jackson.core.StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN);

  private TextEdit() {}

  private static DefaultPrettyPrinter printer() {
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEntrySpacing(Separators.Spacing.AFTER)
            .withArrayValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentObjectsWith(DefaultPrettyPrinter.NopIndenter.instance);
    printer.indentArraysWith(DefaultPrettyPrinter.NopIndenter.instance);
    return printer;
  }

  /**
   * Sets a field; objects on the way to it are added where they are missing.
   *
   * @param text a JSON object
   * @param path names of the fields from the outside in; of an entry of a list its place, from 0
   * @param value what the field is to hold
   * @return the changed text
   * @throws UnreadableFileException where something on the way is no object
   */
  public static String set(String text, List<String> path, JsonNode value)
      throws UnreadableFileException {
    TextSpans at = TextSpans.of(text);
    for (int i = 0; i < path.size(); i++) {
      if (at.kind() == TextSpans.Kind.PLAIN) {
        throw notAnObject(path.subList(0, i));
      }
      TextSpans next = at.members().get(path.get(i));
      if (next == null) {
        String json = oneLine(value);
        for (int j = path.size() - 1; j > i; j--) {
          json = "{" + quoted(path.get(j)) + ": " + json + "}";
        }
        String name = at.kind() == TextSpans.Kind.OBJECT ? quoted(path.get(i)) + ": " : "";
        return insert(text, at, name + json);
      }
      at = next;
    }
    return text.substring(0, at.start()) + oneLine(value) + text.substring(at.end());
  }

  /**
   * Adds an entry to a list; where there is no such list yet, it is made, and a single value in its
   * place becomes its first entry.
   *
   * @param text a JSON object
   * @param field the name of the list, a field of that object
   * @param entry the entry
   * @return the changed text
   * @throws UnreadableFileException where the text is no object
   */
  public static String append(String text, String field, JsonNode entry)
      throws UnreadableFileException {
    TextSpans root = TextSpans.of(text);
    if (root.kind() != TextSpans.Kind.OBJECT) {
      throw notAnObject(List.of());
    }
    TextSpans list = root.members().get(field);
    String json = oneLine(entry);
    if (list == null) {
      String outer = ownLine(text, root) ? newLine(text) + indent(text, root.lastStart()) : "";
      String inner = outer.isEmpty() ? json : outer + STEP + json + outer;
      return insert(text, root, quoted(field) + ": [" + inner + "]");
    }
    if (list.kind() == TextSpans.Kind.LIST) {
      return insert(text, list, json);
    }
    String single = text.substring(list.start(), list.end());
    return text.substring(0, list.start())
        + "["
        + single
        + ", "
        + json
        + "]"
        + text.substring(list.end());
  }

  /** Puts a new last entry into an object or list, laid out like the one before it. */
  private static String insert(String text, TextSpans into, String entry) {
    if (into.isEmpty()) {
      return text.substring(0, into.start() + 1) + entry + text.substring(into.end() - 1);
    }
    String between =
        ownLine(text, into) ? "," + newLine(text) + indent(text, into.lastStart()) : ", ";
    return text.substring(0, into.lastEnd()) + between + entry + text.substring(into.lastEnd());
  }

  /** True where the last entry stands on a line of its own. */
  private static boolean ownLine(String text, TextSpans holder) {
    if (holder.isEmpty()) {
      return false;
    }
    int lineStart = text.lastIndexOf('\n', holder.lastStart()) + 1;
    return lineStart > holder.start() && text.substring(lineStart, holder.lastStart()).isBlank();
  }

  private static String indent(String text, int start) {
    return text.substring(text.lastIndexOf('\n', start) + 1, start);
  }

  private static String newLine(String text) {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  private static String oneLine(JsonNode value) {
    try {
      return ONE_LINE.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("a value made in memory could not be written", e);
    }
  }

  private static String quoted(String name) {
    return oneLine(com.fasterxml.jackson.databind.node.TextNode.valueOf(name));
  }

  private static UnreadableFileException notAnObject(List<String> path) {
    return new UnreadableFileException(
        path.isEmpty() ? "no JSON object" : String.join(".", path) + " that is no object",
        "an object in { }",
        "mend the file first");
  }
}
