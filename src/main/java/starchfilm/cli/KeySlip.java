package starchfilm.cli;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/**
 * A page that only its owner may read and that shows a key when it is opened: any user of a machine
 * can read the words of a command, so the browser is given this file's name and not the key.
 */
final class KeySlip {
  private KeySlip() {}

  /**
   * Writes one.
   *
   * @param address where the pages are
   * @param key a key for one browser
   * @return the file; empty where the system keeps no file private or writes none
   */
  static Optional<Path> of(String address, String key) {
    if (!FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      // On Windows the temporary folder is the user's own.
      return written(address, key);
    }
    return written(
        address,
        key,
        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
  }

  private static Optional<Path> written(String address, String key, FileAttribute<?>... only) {
    try {
      Path slip = Files.createTempFile("starchfilm-", ".html", only);
      slip.toFile().deleteOnExit();
      Files.writeString(
          slip,
          """
          <!DOCTYPE html><html lang="en"><head><meta charset="UTF-8"><title>starchfilm</title>\
          </head><body><form method="post" action="%senter">\
          <input type="hidden" name="key" value="%s"><button type="submit">Open the trials</button>\
          </form><script>document.forms[0].submit()</script></body></html>"""
              .formatted(address, key));
      return Optional.of(slip);
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /** Deletes it; its key is used by then, or the program ends. */
  static void remove(Optional<Path> slip) {
    slip.ifPresent(file -> file.toFile().delete());
  }
}
