package starchfilm.files.saving;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** What the system said when a file could not be written, in a sentence for its owner. */
public final class WriteFailure {
  private static final String NO_RIGHT = "this file or its folder may not be written to";
  private static final String CHECK_DISK = "nothing was changed; check the disk and try again";

  private WriteFailure() {}

  /**
   * Why a file could not be written, and what to do.
   *
   * @param e what the system threw
   * @return such as {@code the disk is full; nothing was changed; make room and try again}
   */
  public static String why(Exception e) {
    return given(e) + "; " + mend(e);
  }

  static String given(Exception e) {
    if (e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException) {
      return NO_RIGHT;
    }
    if (e instanceof NoSuchFileException) {
      return "there is no such folder";
    }
    String reason =
        e instanceof FileSystemException named && named.getReason() != null
            ? named.getReason()
            : String.valueOf(e.getMessage());
    String small = reason.toLowerCase(Locale.ROOT);
    if (small.contains("no space left") || small.contains("not enough space")) {
      return "the disk is full";
    }
    if (small.contains("read-only") || small.contains("not permitted")) {
      return NO_RIGHT;
    }
    if (small.contains("name too long")) {
      return "the name of the file is too long for the version before to be kept beside it";
    }
    if (small.contains("too large") || small.contains("quota")) {
      return "the system does not let this file grow";
    }
    return "the system could not write the file";
  }

  static String mend(Exception e) {
    return switch (given(e)) {
      case "the disk is full" -> "nothing was changed; make room and try again";
      case "there is no such folder" -> "make the folder, or check its name";
      case NO_RIGHT ->
          "nothing was changed; give yourself the right to write there, or use another folder";
      case "the name of the file is too long for the version before to be kept beside it" ->
          "nothing was changed; give it a name of fewer than 240 bytes";
      default -> CHECK_DISK;
    };
  }
}
