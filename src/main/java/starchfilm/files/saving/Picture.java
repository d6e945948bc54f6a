package starchfilm.files.saving;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import starchfilm.files.findings.Fault;

/** Tells by its first bytes whether a file is a picture that a page can show. */
final class Picture {
  /** The largest picture taken; a telephone's are a fifth of it. */
  static final long MAX_BYTES = 30_000_000;

  private static final int HEAD_BYTES = 16;

  private Picture() {}

  /**
   * What speaks against a picture.
   *
   * @param name what it is called in the sentence
   * @return empty where nothing does
   * @throws IOException where it cannot be read
   */
  static Optional<Fault> fault(String name, Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return fault(name, Files.size(file), in.readNBytes(HEAD_BYTES));
    }
  }

  /** The same of one that is at hand. */
  static Optional<Fault> fault(String name, byte[] content) {
    byte[] head = Arrays.copyOf(content, Math.min(content.length, HEAD_BYTES));
    return fault(name, content.length, head);
  }

  private static Optional<Fault> fault(String name, long bytes, byte[] head) {
    if (bytes > MAX_BYTES) {
      return Optional.of(
          Fault.of(
              name,
              "",
              "a picture of " + Math.round(bytes / 1e6) + " MB",
              "at most " + MAX_BYTES / 1_000_000 + " MB",
              "save it smaller"));
    }
    String latin = new String(head, StandardCharsets.ISO_8859_1);
    boolean known =
        latin.startsWith("\u00FF\u00D8\u00FF")
            || latin.startsWith("\u0089PNG\r\n\u001A\n")
            || latin.startsWith("GIF8");
    if (known) {
      return Optional.empty();
    }
    boolean ofTelephone = latin.length() >= 12 && latin.startsWith("ftyp", 4);
    return Optional.of(
        Fault.of(
            name,
            "",
            ofTelephone ? "a photo or film in a format of phones" : "a file that is no picture",
            "JPEG, PNG or GIF",
            ofTelephone ? "export it as JPEG" : "name the picture itself"));
  }
}
