package starchfilm.files.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * A file as it was when it was read, by which a change is seen.
 *
 * @param bytes its size; -1 where there is none
 * @param modified when it was last changed, by the clock of its file system
 * @param key what tells it from another file of its name, where the system has such a key
 */
public record FileStamp(long bytes, FileTime modified, Optional<Object> key) {
  /** No file of this name. */
  private static final FileStamp ABSENT =
      new FileStamp(-1, FileTime.fromMillis(0), Optional.empty());

  /** The file as it is now. */
  public static FileStamp of(Path file) {
    try {
      BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
      return new FileStamp(now.size(), now.lastModifiedTime(), Optional.ofNullable(now.fileKey()));
    } catch (IOException e) {
      return ABSENT;
    }
  }

  /** Compared by hand: what a record brings along is made anew at every start of the program. */
  public boolean is(FileStamp other) {
    return bytes == other.bytes && modified.equals(other.modified) && key.equals(other.key);
  }
}
