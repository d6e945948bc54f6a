package starchfilm.files.json;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The patterns of a table that is packed with the program, by their names. In a row, {@code {name}}
 * stands for the pattern of another.
 *
 * @param written the rows as they are written
 */
public record PackedPatterns(Map<String, String> written) {
  private static final Pattern OTHER = Pattern.compile("\\{([a-z ]+)}");

  /**
   * Reads a table: a row per line, name and pattern apart by a bar.
   *
   * @param beside the class it is packed beside
   * @param name its name
   * @return its patterns
   */
  public static PackedPatterns of(Class<?> beside, String name) {
    return of(beside, name, Map.of());
  }

  /**
   * The same, whose rows may name patterns that stand elsewhere, too.
   *
   * @param beside as above
   * @param name as above
   * @param others those patterns by their names
   * @return its patterns
   */
  public static PackedPatterns of(Class<?> beside, String name, Map<String, String> others) {
    Map<String, String> written = new HashMap<>(others);
    PackedText.rows(beside, name, 2).forEach(row -> written.put(row.get(0), row.get(1)));
    return new PackedPatterns(Map.copyOf(written));
  }

  /**
   * A pattern as text, for a part of another.
   *
   * @param name its name
   * @return a regular expression
   */
  public String text(String name) {
    String row = Objects.requireNonNull(written.get(name), () -> "no pattern " + name);
    return OTHER.matcher(row).replaceAll(other -> Matcher.quoteReplacement(text(other.group(1))));
  }

  /**
   * A pattern.
   *
   * @param name its name
   * @return for texts
   */
  public Pattern get(String name) {
    return Pattern.compile(text(name));
  }
}
