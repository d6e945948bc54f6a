package starchfilm.files.saving;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/**
 * The reason the system gave for not writing a file, in words for its owner.
 *
 * @param given what stands in the way
 * @param mend what was left as it was, and what to do
 */
public record WriteFailure(String given, String mend) {
  private static final WriteFailure NO_RIGHT =
      new WriteFailure(
          "this file or its folder may not be written to",
          "nothing was changed; check the folder's permissions, or use another" + " folder");

  /**
   * The reason why a file could not be written.
   *
   * @param e what the system threw
   * @return the reason
   */
  public static WriteFailure of(Exception e) {
    if (e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException) {
      return NO_RIGHT;
    }
    if (e instanceof NoSuchFileException) {
      return new WriteFailure("there is no such folder", "make the folder, or check its name");
    }
    String reason =
        e instanceof FileSystemException named && named.getReason() != null
            ? named.getReason()
            : String.valueOf(e.getMessage());
    String small = reason.toLowerCase(Locale.ROOT);
    if (small.contains("no space left") || small.contains("not enough space")) {
      return new WriteFailure("the disk is full", "nothing was changed; make room and try again");
    }
    if (small.contains("read-only") || small.contains("not permitted")) {
      return NO_RIGHT;
    }
    if (small.contains("name too long")) {
      return new WriteFailure(
          "the name of the file is too long for the version before to be kept beside it",
          "nothing was changed; give it a name of fewer than 240 bytes");
    }
    return new WriteFailure(
        small.contains("too large") || small.contains("quota")
            ? "the system does not let this file grow"
            : "the system could not write the file",
        "nothing was changed; check the disk and try again");
  }

  /**
   * The reason in one sentence.
   *
   * @return such as {@code the disk is full; nothing was changed; make room and try again}
   */
  public String sentence() {
    return given + "; " + mend;
  }
}
