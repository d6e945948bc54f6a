package starchfilm.files.saving;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Replaces files so that nothing is ever lost: lock the folder, write a sibling, force it to the
 * disk, keep a copy of the last version, rename.
 *
 * <p>A rename within a folder happens at once or not at all, so whoever reads the file, even after
 * a kill or a power cut, finds the old or the new one whole. Two writers, threads or processes,
 * wait for each other. A file that somebody changed by other means while it was being rewritten is
 * read again first.
 */
public final class SafeFile {
  /** What the copy of the last version has after the name of the file. */
  public static final String BEFORE = ".before";

  private static final int TRIES = 5;

  private SafeFile() {}

  /** Makes the new content of a file out of the old. */
  @FunctionalInterface
  public interface Change {
    /**
     * Makes the new content.
     *
     * @param before the old content; empty where there is no file yet
     * @return the new content
     * @throws NotWrittenException to leave the file as it is
     */
    byte[] apply(Optional<byte[]> before) throws NotWrittenException;
  }

  /**
   * Rewrites a file, or writes it for the first time.
   *
   * @param file the file; where it is a link, what it leads to is rewritten
   * @param change makes the new content; called again if the file changes meanwhile
   * @throws NotWrittenException where it cannot be written; the file is as it was
   */
  public static void rewrite(Path file, Change change) throws NotWrittenException {
    try {
      Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize();
      FolderLock held = FolderLock.around(target);
      try {
        for (int i = 0; i < TRIES; i++) {
          if (tried(target, change)) {
            return;
          }
        }
      } finally {
        held.close();
      }
      throw NotWrittenException.because(
          file, "another program keeps changing this file", "close it there and try again");
    } catch (IOException | ReadOnlyFileSystemException e) {
      throw NotWrittenException.because(file, given(e), mend(e));
    }
  }

  /**
   * Writes a new file.
   *
   * @param file the file
   * @param content its content
   * @return false where there is such a file already, which stays as it is
   * @throws NotWrittenException where it cannot be written
   */
  static boolean create(Path file, byte[] content) throws NotWrittenException {
    if (Files.exists(file)) {
      return false;
    }
    AtomicBoolean taken = new AtomicBoolean();
    rewrite(
        file,
        before -> {
          // Another writer may take the name before we have the lock.
          taken.set(before.isPresent());
          return before.orElse(content);
        });
    return !taken.get();
  }

  /** Writes once; false where the file changed after it was read. */
  private static boolean tried(Path file, Change change) throws IOException, NotWrittenException {
    Optional<byte[]> before = read(file);
    byte[] after = change.apply(before);
    if (before.isPresent() && Arrays.equals(before.get(), after)) {
      return true;
    }
    if (before.isPresent() && !Files.isWritable(file)) {
      throw new AccessDeniedException(file.toString());
    }
    Path fresh = sibling(file, ".new");
    Path copy = sibling(file, ".copy");
    try {
      write(fresh, after, file);
      if (before.isPresent()) {
        write(copy, before.get(), file);
        Optional<byte[]> now = read(file);
        if (now.isEmpty() || !Arrays.equals(now.get(), before.get())) {
          return false;
        }
        Files.move(
            copy,
            file.resolveSibling(file.getFileName() + BEFORE),
            StandardCopyOption.ATOMIC_MOVE,
            StandardCopyOption.REPLACE_EXISTING);
      }
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      forceFolder(file);
      return true;
    } finally {
      Files.deleteIfExists(fresh);
      Files.deleteIfExists(copy);
    }
  }

  /** Hidden, and not ending in .json, so that no half-written file is ever taken for a trial. */
  private static Path sibling(Path file, String ending) {
    return file.resolveSibling("." + file.getFileName() + ending);
  }

  private static Optional<byte[]> read(Path file) throws IOException {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  private static void write(Path fresh, byte[] bytes, Path like) throws IOException {
    // A leftover of a killed program; nobody else writes here while we hold the lock.
    Files.deleteIfExists(fresh);
    try (FileChannel channel =
        FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
    PosixFileAttributeView rights =
        Files.getFileAttributeView(fresh, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (rights != null && Files.exists(like)) {
      rights.setPermissions(Files.getPosixFilePermissions(like));
    }
  }

  /** Makes the rename itself last; systems that cannot open a folder do so on their own. */
  private static void forceFolder(Path file) throws IOException {
    Path folder = file.getParent();
    if (folder == null || !Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

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
      return "this file or its folder may not be written to";
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
    if (small.contains("read-only")) {
      return "this file or its folder may not be written to";
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
      case "this file or its folder may not be written to" ->
          "nothing was changed; give yourself the right to write there, or use another folder";
      default -> "nothing was changed; check the disk and try again";
    };
  }
}
