package starchfilm.files.saving;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A file of ours beside the one it will replace.
 *
 * <p>Its name cannot be guessed and it is made anew, so that nobody who may write in the folder can
 * have put a link there for us to follow. It is hidden and does not end in .json, so that no
 * half-written file is ever taken for a trial.
 */
final class ScratchFile implements AutoCloseable {
  private static final String START = ".starchfilm-";
  private static final String END = ".new";
  private static final Duration DEAD_AFTER = Duration.ofMinutes(10);
  private static final int STICKY = 01000;
  private static final int SUPERUSER = 0;

  private final Path path;

  private ScratchFile(Path path) {
    this.path = path;
  }

  /** Writes one and forces it to the disk. */
  static ScratchFile beside(Path file, byte[] bytes) throws IOException {
    ScratchFile scratch = new ScratchFile(file.resolveSibling(START + UUID.randomUUID() + END));
    try (FileChannel channel =
        FileChannel.open(scratch.path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    } catch (IOException e) {
      scratch.close();
      throw e;
    }
    return scratch;
  }

  /**
   * Takes over owner, group and rights of the file it will replace.
   *
   * @throws NotWrittenException where the folder does not let this user replace it
   */
  void takeAfter(Path file, List<String> remarks) throws IOException, NotWrittenException {
    if (!file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
      return;
    }
    int mine = number(path, "uid");
    int owner = number(file, "uid");
    Path folder = file.resolveSibling(".");
    if ((number(folder, "mode") & STICKY) != 0
        && mine != SUPERUSER
        && mine != owner
        && mine != number(folder, "uid")) {
      throw NotWrittenException.because(
          file,
          "a file of another user in a folder in which each may replace only their own",
          "nothing was changed; copy it into a folder of your own");
    }
    if (mine != owner || number(path, "gid") != number(file, "gid")) {
      try {
        Files.setAttribute(path, "unix:uid", owner);
        Files.setAttribute(path, "unix:gid", number(file, "gid"));
      } catch (IOException notAllowed) {
        remarks.add("it belonged to another user or group, and is yours now");
      }
    }
    Files.getFileAttributeView(path, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS)
        .setPermissions(Files.getPosixFilePermissions(file));
    int names = number(file, "nlink");
    if (names > 1) {
      remarks.add(
          "it had " + names + " names (hard links); under the others stays the version before");
    }
  }

  private static int number(Path file, String attribute) throws IOException {
    return ((Number) Files.getAttribute(file, "unix:" + attribute)).intValue();
  }

  void moveTo(Path file) throws IOException {
    Files.move(path, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Moves where the file it was made for is written already; empty where that fails. */
  Optional<Path> keptAs(Path file, List<String> remarks) {
    try {
      moveTo(file);
      return Optional.of(file);
    } catch (IOException e) {
      remarks.add("it is written, but what it was could not be kept");
      return Optional.empty();
    }
  }

  /**
   * Deletes what killed programs left.
   *
   * @param alone true where no other program of ours can be writing there now
   */
  static void clear(Path folder, boolean alone) {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, START + "*" + END)) {
      for (Path file : left) {
        Instant written = Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toInstant();
        if (alone || written.isBefore(Instant.now().minus(DEAD_AFTER))) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException kept) {
      // A hidden leftover harms nobody, and the next writer tries again.
    }
  }

  /** Deletes it, unless it has moved. */
  @Override
  public void close() {
    try {
      Files.deleteIfExists(path);
    } catch (IOException kept) {
      // The file it was made for may be written by now: this must not say otherwise.
    }
  }
}
