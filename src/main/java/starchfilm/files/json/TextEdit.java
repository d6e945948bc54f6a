package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;

/**
 * Changes a JSON text in one place and leaves every other character as its writer left it: fields
 * the program does not know, their order, the layout, the digits.
 */
public final class TextEdit {
  private static final String STEP = "  ";
  private static final LocatedReader READER = new LocatedReader();
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
    Located at = READER.read(text);
    for (int i = 0; i < path.size(); i++) {
      if (!(at instanceof ObjectValue || at instanceof ListValue)) {
        throw notAnObject(path.subList(0, i));
      }
      Optional<Located> next = within(at, path.get(i));
      if (next.isEmpty()) {
        String json = oneLine(value);
        for (int j = path.size() - 1; j > i; j--) {
          json = "{" + quoted(path.get(j)) + ": " + json + "}";
        }
        return insert(
            text, at, at instanceof ObjectValue ? quoted(path.get(i)) + ": " + json : json);
      }
      at = next.get();
    }
    return replaced(text, at.place(), oneLine(value));
  }

  /**
   * Takes a field out of its object or an entry out of its list, with the comma that goes with it;
   * a list that is then empty goes, too.
   *
   * @param text a JSON object
   * @param path names of the fields from the outside in; of an entry of a list its place, from 0
   * @return the changed text; the same where there is no such thing
   * @throws UnreadableFileException where the text is no JSON
   */
  public static String remove(String text, List<String> path) throws UnreadableFileException {
    Located at = READER.read(text);
    for (String name : path.subList(0, path.size() - 1)) {
      Optional<Located> next =
          at instanceof ObjectValue || at instanceof ListValue
              ? within(at, name)
              : Optional.empty();
      if (next.isEmpty()) {
        return text;
      }
      at = next.get();
    }
    List<Last> entries = entries(at);
    int index =
        at instanceof ObjectValue object
            ? List.copyOf(object.members().keySet()).indexOf(path.get(path.size() - 1))
            : Integer.parseInt(path.get(path.size() - 1));
    if (index < 0 || index >= entries.size()) {
      return text;
    }
    if (entries.size() == 1 && at instanceof ListValue && path.size() > 1) {
      return remove(text, path.subList(0, path.size() - 1));
    }
    int from = index > 0 ? entries.get(index - 1).end() : entries.get(index).start();
    int to =
        index > 0 || entries.size() == 1
            ? entries.get(index).end()
            : entries.get(index + 1).start();
    return text.substring(0, from) + text.substring(to);
  }

  private static List<Last> entries(Located holder) {
    return holder instanceof ListValue list
        ? list.entries().stream()
            .map(entry -> new Last(entry.place().start(), entry.place().end()))
            .toList()
        : holder instanceof ObjectValue object
            ? object.members().values().stream()
                .map(member -> new Last(member.key().start(), member.value().place().end()))
                .toList()
            : List.of();
  }

  private static Optional<Located> within(Located holder, String name) {
    if (holder instanceof ListValue list) {
      int place = Integer.parseInt(name);
      return place < list.entries().size()
          ? Optional.of(list.entries().get(place))
          : Optional.empty();
    }
    return Optional.ofNullable(((ObjectValue) holder).members().get(name)).map(Member::value);
  }

  private static String replaced(String text, Place place, String by) {
    return text.substring(0, place.start()) + by + text.substring(place.end());
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
    if (!(READER.read(text) instanceof ObjectValue root)) {
      throw notAnObject(List.of());
    }
    Optional<Located> there = within(root, field);
    String json = oneLine(entry);
    if (there.isEmpty()) {
      String outer = lineOfLast(text, root).map(indent -> newLine(text) + indent).orElse("");
      String inner = outer.isEmpty() ? json : outer + STEP + json + outer;
      return insert(text, root, quoted(field) + ": [" + inner + "]");
    }
    if (there.get() instanceof ListValue list) {
      return insert(text, list, json);
    }
    Place single = there.get().place();
    return replaced(
        text, single, "[" + text.substring(single.start(), single.end()) + ", " + json + "]");
  }

  /** Puts a new last entry into an object or list, laid out like the one before it. */
  private static String insert(String text, Located into, String entry) {
    Optional<Last> last = last(into);
    if (last.isEmpty()) {
      Place place = into.place();
      return text.substring(0, place.start() + 1) + entry + text.substring(place.end() - 1);
    }
    String between =
        lineOfLast(text, into).map(indent -> "," + newLine(text) + indent).orElse(", ");
    int end = last.get().end();
    return text.substring(0, end) + between + entry + text.substring(end);
  }

  /** Where an entry stands. */
  private record Last(int start, int end) {}

  private static Optional<Last> last(Located holder) {
    return entries(holder).stream().reduce((first, second) -> second);
  }

  /** How far the last entry is indented, where it stands on a line of its own. */
  private static Optional<String> lineOfLast(String text, Located holder) {
    return last(holder)
        .map(Last::start)
        .filter(start -> text.lastIndexOf('\n', start) + 1 > holder.place().start())
        .map(start -> text.substring(text.lastIndexOf('\n', start) + 1, start))
        .filter(String::isBlank);
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
        "fix the file first");
  }
}
