package starchfilm.files.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

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
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program was packed without " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the packed file " + name + " cannot be read", e);
    }
  }
}
