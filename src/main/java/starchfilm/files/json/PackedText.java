package starchfilm.files.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** The text of a file that is packed with the program. */
public final class PackedText {
  private PackedText() {}

  /**
   * Reads a packed file.
   *
   * @param beside a class of the package the file belongs to
   * @param name the file's name
   * @return its text, read as UTF-8
   */
  public static String of(Class<?> beside, String name) {
    return new String(bytes(beside, name), StandardCharsets.UTF_8);
  }

  /** The text as it is, whatever it holds. */
  public static byte[] bytes(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program was packed without " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("the packed file " + name + " cannot be read", e);
    }
  }

  /**
   * Reads a packed table: a row per line, its columns apart by a bar; a line that begins with # is
   * no row.
   *
   * @param beside a class of the package the table belongs to
   * @param name the file's name
   * @param columns how many columns it has; the last may hold bars
   * @return its rows, without the blanks around a column; a column left out at the end is empty
   */
  public static List<List<String>> rows(Class<?> beside, String name, int columns) {
    return of(beside, name)
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> Stream.of(line.split("\\|", columns)).map(String::strip))
        .map(cells -> Stream.concat(cells, Stream.generate(() -> "")).limit(columns).toList())
        .toList();
  }
}
