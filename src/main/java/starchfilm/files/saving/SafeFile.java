package starchfilm.files.saving;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntFunction;

/**
 * Replaces files so that nothing is ever lost: lock the folder, write a sibling, force it to the
 * disk, keep a copy of the last version, rename.
 *
 * <p>A rename within a folder happens at once or not at all, so whoever reads the file, even after
 * a kill or a power cut, finds the old or the new one whole. Two writers, threads or processes,
 * wait for each other. A file that somebody changed by other means while it was being rewritten is
 * read again first. Where the file is a link, what it leads to is rewritten, and the copy lies
 * beside that.
 */
public final class SafeFile {
  static final String BEFORE = ".before";
  private static final int TRIES = 5;
  private static final int MOST_NAMES = 10_000;

  private SafeFile() {}

  /** Makes the new content of a file out of the old. */
  @FunctionalInterface
  public interface ContentChange {
    /**
     * Makes the new content.
     *
     * @param before the old content; empty where there is no file yet
     */
    byte[] apply(Optional<byte[]> before) throws NotWrittenException;
  }

  /**
   * The outcome of a write.
   *
   * @param before where the version before is kept; empty where there was none, or nothing changed
   * @param remarks what its owner should know, each a clause about the file
   * @param version the version the file has now, see {@link TrialFileText#version}
   */
  public record WrittenFile(Optional<Path> before, List<String> remarks, String version) {
    public WrittenFile {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * Rewrites a file that others of our programs may be rewriting, or writes it for the first time.
   *
   * @param file the file
   * @param change makes the new content; called again if the file changes meanwhile
   * @return where the version before is, and remarks
   * @throws NotWrittenException where it cannot be written; the file is as it was
   */
  public static WrittenFile rewrite(Path file, ContentChange change) throws NotWrittenException {
    return written(file, change, true, true);
  }

  /**
   * Rewrites a file with the version before it, which is then the only place that has it: so the
   * file is replaced first, and what it was is kept afterwards.
   *
   * @param file the file
   * @param change gives the version before
   * @return where the version taken back is, and remarks
   * @throws NotWrittenException where it cannot be written; the file is as it was
   */
  static WrittenFile takeBack(Path file, ContentChange change) throws NotWrittenException {
    return written(file, change, true, false);
  }

  /**
   * Writes a result that stands by itself; the folder, which may be any, gets no lock.
   *
   * @param file the file
   * @param change makes the content, or refuses to replace what is there
   * @return where the version before is, and remarks
   * @throws NotWrittenException where it cannot be written; the file is as it was
   */
  public static WrittenFile replace(Path file, ContentChange change) throws NotWrittenException {
    return written(file, change, false, true);
  }

  /**
   * Writes a new file.
   *
   * @return false where there is such a file already, which stays as it is
   * @throws NotWrittenException where it cannot be written
   */
  static boolean create(Path file, byte[] content) throws NotWrittenException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
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

  /**
   * Writes a new file under the first name that is free.
   *
   * @param folder its folder
   * @param names the names to try, by their number from 1
   * @return the file
   * @throws NotWrittenException where none is free or it cannot be written
   */
  static Path create(Path folder, IntFunction<String> names, byte[] content)
      throws NotWrittenException {
    for (int i = 1; i <= MOST_NAMES; i++) {
      Path file = folder.resolve(names.apply(i));
      if (create(file, content)) {
        return file;
      }
    }
    throw NotWrittenException.because(
        folder.resolve(names.apply(1)),
        "there are " + MOST_NAMES + " files of this name already",
        "move older ones to another folder, or choose another name");
  }

  /**
   * Deletes new files whose note was refused.
   *
   * @throws NotWrittenException where one of them stays
   */
  static void delete(List<Path> files) throws NotWrittenException {
    for (Path file : files) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        throw NotWrittenException.because(
            file,
            "a file that was not noted and could not be removed either",
            "delete it yourself");
      }
    }
  }

  private static Path target(Path file) throws IOException, NotWrittenException {
    if (!Files.exists(file)) {
      if (Files.isSymbolicLink(file)) {
        throw NotWrittenException.because(
            file, "a link that leads nowhere", "plug in the disk it leads to, or delete the link");
      }
      return file.toAbsolutePath().normalize();
    }
    Path target = file.toRealPath();
    if (!Files.isRegularFile(target)) {
      throw NotWrittenException.because(
          file, "a folder, a device or a pipe", "nothing was changed; name a file");
    }
    return target;
  }

  private static WrittenFile written(
      Path file, ContentChange change, boolean alone, boolean copyFirst)
      throws NotWrittenException {
    try {
      Path target = target(file);
      try (FolderLock held = alone ? FolderLock.around(target) : null) {
        ScratchFile.clear(target.resolveSibling("."), held != null);
        for (int i = 0; i < TRIES; i++) {
          Optional<WrittenFile> written = tried(target, change, copyFirst);
          if (written.isPresent()) {
            return written.get();
          }
        }
      }
    } catch (IOException | ReadOnlyFileSystemException e) {
      throw NotWrittenException.because(file, e);
    }
    throw NotWrittenException.because(
        file, "another program keeps changing this file", "close it there and try again");
  }

  /** Writes once; empty where the file changed after it was read. */
  private static Optional<WrittenFile> tried(Path file, ContentChange change, boolean copyFirst)
      throws IOException, NotWrittenException {
    Optional<byte[]> before = read(file);
    byte[] after = change.apply(before);
    if (before.isPresent() && Arrays.equals(before.get(), after)) {
      return Optional.of(
          new WrittenFile(Optional.empty(), List.of(), TrialFileText.version(after)));
    }
    if (before.isPresent() && !Files.isWritable(file)) {
      throw new AccessDeniedException(file.toString());
    }
    List<String> remarks = new ArrayList<>();
    Optional<Path> kept = before.map(old -> file.resolveSibling(file.getFileName() + BEFORE));
    try (ScratchFile fresh = ScratchFile.beside(file, after)) {
      if (before.isPresent()) {
        fresh.takeAfter(file, remarks);
        try (ScratchFile copy = ScratchFile.beside(file, before.get())) {
          copy.takeAfter(file, new ArrayList<>());
          Optional<byte[]> now = read(file);
          if (now.isEmpty() || !Arrays.equals(now.get(), before.get())) {
            return Optional.empty();
          }
          if (copyFirst) {
            copy.moveTo(kept.orElseThrow());
          } else {
            fresh.moveTo(file);
            kept = copy.keptAs(kept.orElseThrow(), remarks);
          }
        }
      }
      if (copyFirst) {
        fresh.moveTo(file);
      }
    }
    // From here on the file is written, whatever else may fail.
    if (!forced(file)) {
      remarks.add(
          "it is written, but the system does not say whether that has reached the disk yet");
    }
    return Optional.of(new WrittenFile(kept, remarks, TrialFileText.version(after)));
  }

  private static Optional<byte[]> read(Path file) throws IOException {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** Makes the rename itself last; systems that cannot open a folder do so on their own. */
  private static boolean forced(Path file) {
    Path folder = file.resolveSibling(".");
    try {
      if (!Files.getFileStore(folder).supportsFileAttributeView("posix")) {
        return true;
      }
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
