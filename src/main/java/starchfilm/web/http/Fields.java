package starchfilm.web.http;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** The named texts of a form or of an address after its question mark, in the order sent. */
public final class Fields {
  /** No fields. */
  public static final Fields NONE = new Fields(Map.of());

  private static final int MOST = 2_000;

  private final Map<String, List<String>> values;

  private Fields(Map<String, List<String>> values) {
    this.values = values;
  }

  /** Fields given one by one. */
  static Fields of(Map<String, List<String>> values) {
    Map<String, List<String>> copy = new LinkedHashMap<>();
    values.forEach((name, texts) -> copy.put(name, List.copyOf(texts)));
    return new Fields(copy);
  }

  /**
   * Reads {@code application/x-www-form-urlencoded} text.
   *
   * @param encoded such as {@code a=1&b=two%20words}; may be empty
   * @throws HttpError where a per cent sign is not followed by two hexadecimal digits
   */
  static Fields parse(String encoded) {
    // No more is split than is read: millions of names would fill the memory first.
    String[] pairs = encoded.split("&", MOST + 1);
    if (pairs.length > MOST) {
      throw HttpError.malformed("The form has more than " + MOST + " fields; nothing was read.");
    }
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (String pair : pairs) {
      if (!pair.isEmpty()) {
        String[] sides = pair.split("=", 2);
        values
            .computeIfAbsent(decoded(sides[0]), name -> new ArrayList<>())
            .add(sides.length == 1 ? "" : decoded(sides[1]));
      }
    }
    return of(values);
  }

  /**
   * These fields, and those that were not sent with what is usual.
   *
   * @param usual the usual text of a field
   * @return the fields
   */
  public Fields orUsual(Map<String, String> usual) {
    Map<String, List<String>> both = new LinkedHashMap<>(values);
    usual.forEach((name, text) -> both.putIfAbsent(name, List.of(text)));
    return of(both);
  }

  /**
   * The same but for a field.
   *
   * @param name the field
   * @return the others
   */
  public Fields without(String name) {
    Map<String, List<String>> others = new LinkedHashMap<>(values);
    others.remove(name);
    return of(others);
  }

  /**
   * The first text of a field.
   *
   * @param name the field
   * @return its text with line ends as {@code \n}, without spaces around; empty where it was not
   *     sent
   */
  public String text(String name) {
    List<String> texts = all(name);
    return texts.isEmpty() ? "" : texts.get(0).strip();
  }

  /**
   * The whole number of a field.
   *
   * @param name the field
   * @return 0 to 9999; empty where anything else was sent
   */
  public OptionalInt number(String name) {
    String text = text(name);
    return text.matches("[0-9]{1,4}")
        ? OptionalInt.of(Integer.parseInt(text))
        : OptionalInt.empty();
  }

  /**
   * Every text of a field.
   *
   * @param name the field
   * @return in the order sent, with line ends as {@code \n}
   */
  public List<String> all(String name) {
    return values.getOrDefault(name, List.of()).stream()
        .map(text -> text.replace("\r\n", "\n"))
        .toList();
  }

  /**
   * Whether a field was sent, be it empty.
   *
   * @param name the field
   * @return true where it was
   */
  public boolean has(String name) {
    return values.containsKey(name);
  }

  /**
   * The fields that were sent.
   *
   * @return their names in the order sent
   */
  public Set<String> names() {
    return java.util.Collections.unmodifiableSet(values.keySet());
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw HttpError.malformed(
          "The form or address could not be read: a % sign must be followed by two hexadecimal"
              + " digits. Open the page again and send the form from there.");
    }
  }

  @Override
  public String toString() {
    return values.toString();
  }
}
