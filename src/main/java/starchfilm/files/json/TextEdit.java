package starchfilm.files.json;

import java.util.List;
import java.util.Optional;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;

/**
 * Changes a JSON text in one place and leaves every other character as its writer left it: fields
 * the program does not know, their order, the layout, the digits.
 */
public final class TextEdit {
  private static final String STEP = "  ";

  private TextEdit() {}

  /**
   * Sets a field; objects on the way to it are added where they are missing.
   *
   * @param text a JSON object
   * @param path names of the fields from the outside in, with dots; of an entry of a list its
   *     place, from 0, which may also be that of a value that stands alone
   * @param value what the field is to hold
   * @return the changed text
   * @throws UnreadableFileException where something on the way is no object
   */
  public static String set(String text, String path, Located value) throws UnreadableFileException {
    Located root = LocatedReader.read(text);
    Optional<Located> there = root.at(path);
    if (there.isPresent()) {
      return replaced(text, there.get().place(), LocatedWriter.line(value));
    }
    String name = last(path);
    Optional<Located> holder = root.at(around(path));
    if (holder.isEmpty()) {
      return set(text, around(path), Located.object().with(name, value));
    }
    if (holder.get() instanceof ListValue list && name.matches("[0-9]+")) {
      return insert(text, list, LocatedWriter.line(value));
    }
    if (holder.get() instanceof ObjectValue object) {
      return insert(text, object, field(name, LocatedWriter.line(value)));
    }
    throw notAnObject(around(path));
  }

  /**
   * Takes a field out of its object or an entry out of its list, with the comma that goes with it;
   * a list that is then empty goes, too.
   *
   * @param text a JSON object
   * @param path as above
   * @return the changed text; the same where there is no such thing
   * @throws UnreadableFileException where the text is no JSON
   */
  public static String remove(String text, String path) throws UnreadableFileException {
    Located root = LocatedReader.read(text);
    if (root.at(path).isEmpty()) {
      return text;
    }
    String last = last(path);
    Located holder = root.at(around(path)).orElseThrow();
    int index =
        holder instanceof ObjectValue object
            ? List.copyOf(object.members().keySet()).indexOf(last)
            : Integer.parseInt(last);
    List<TextSpan> entries = entries(holder);
    boolean isAlone = index < 0 || (entries.size() <= 1 && !(holder instanceof ObjectValue));
    if (isAlone && path.contains(".")) {
      return remove(text, around(path));
    }
    int from = index > 0 ? entries.get(index - 1).end() : entries.get(index).start();
    int to =
        index > 0 || entries.size() == 1
            ? entries.get(index).end()
            : entries.get(index + 1).start();
    return text.substring(0, from) + text.substring(to);
  }

  /** The path of what is around a field or an entry; empty for the whole. */
  public static String around(String path) {
    return path.substring(0, Math.max(0, path.lastIndexOf('.')));
  }

  /** The name of a field or an entry itself. */
  public static String last(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private static List<TextSpan> entries(Located holder) {
    return holder instanceof ListValue list
        ? list.entries().stream()
            .map(entry -> new TextSpan(entry.place().start(), entry.place().end()))
            .toList()
        : holder instanceof ObjectValue object
            ? object.members().values().stream()
                .map(member -> new TextSpan(member.key().start(), member.value().place().end()))
                .toList()
            : List.of();
  }

  private static String replaced(String text, Place place, String by) {
    return text.substring(0, place.start()) + by + text.substring(place.end());
  }

  /**
   * Adds an entry to a list; where there is no such list yet, it is made, and a single value in its
   * place becomes its first entry.
   *
   * @param text a JSON object
   * @param path the list
   * @param entry the entry
   * @return the changed text
   * @throws UnreadableFileException where the text is no object
   */
  public static String append(String text, String path, Located entry)
      throws UnreadableFileException {
    Located root = LocatedReader.read(text);
    if (!(root instanceof ObjectValue)) {
      throw notAnObject("");
    }
    Optional<Located> there = root.at(path);
    String json = LocatedWriter.line(entry);
    if (there.isEmpty()) {
      if (path.contains(".")) {
        return set(text, path, Located.list(List.of(entry)));
      }
      String outer = lineOfLast(text, root).map(indent -> newLine(text) + indent).orElse("");
      String inner = outer.isEmpty() ? json : outer + STEP + json + outer;
      return insert(text, root, field(path, "[" + inner + "]"));
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
    Optional<TextSpan> last = last(into);
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
  private record TextSpan(int start, int end) {}

  private static Optional<TextSpan> last(Located holder) {
    return entries(holder).stream().reduce((first, second) -> second);
  }

  /** How far the last entry is indented, where it stands on a line of its own. */
  private static Optional<String> lineOfLast(String text, Located holder) {
    return last(holder)
        .map(TextSpan::start)
        .filter(start -> text.lastIndexOf('\n', start) + 1 > holder.place().start())
        .map(start -> text.substring(text.lastIndexOf('\n', start) + 1, start))
        .filter(String::isBlank);
  }

  private static String newLine(String text) {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  private static String field(String name, String value) {
    return LocatedWriter.line(Located.text(name)) + ": " + value;
  }

  private static UnreadableFileException notAnObject(String path) {
    return new UnreadableFileException(
        path.isEmpty() ? "no JSON object" : path + " that is no object",
        "an object in { }",
        "fix the file first");
  }
}
