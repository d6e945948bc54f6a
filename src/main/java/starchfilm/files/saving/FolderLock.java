package starchfilm.files.saving;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Keeps other threads and other processes of this program from writing in a folder meanwhile.
 *
 * <p>The lock is one on the hidden file {@value #NAME} of the folder. The system takes it off when
 * the process ends, however it ends, so a killed program never leaves a folder locked. The file
 * itself stays: to delete it would be a race.
 */
final class FolderLock implements AutoCloseable {
  static final String NAME = ".starchfilm.lock";

  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final long PAUSE_MS = 5;

  /**
   * One thread of this program at a time: some systems take the lock off as soon as any thread
   * closes the file, whoever holds it.
   */
  private static final ReentrantLock IN_THIS_PROGRAM = new ReentrantLock(true);

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Waits for the lock.
   *
   * @return the lock, to be closed
   * @throws NotWrittenException where others hold it for longer than {@link #PATIENCE}
   * @throws IOException where the folder cannot be written to
   */
  static FolderLock around(Path file) throws IOException, NotWrittenException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    try {
      if (!IN_THIS_PROGRAM.tryLock(PATIENCE.toNanos(), TimeUnit.NANOSECONDS)) {
        throw busy(file);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw busy(file);
    }
    boolean locked = false;
    try {
      FolderLock lock = new FolderLock(locked(file, file.resolveSibling(NAME), end));
      locked = true;
      return lock;
    } finally {
      // Whatever went wrong, want of memory included, must not shut out the other threads.
      if (!locked) {
        IN_THIS_PROGRAM.unlock();
      }
    }
  }

  private static FileChannel locked(Path file, Path name, long end)
      throws IOException, NotWrittenException {
    if (Files.exists(name, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(name, LinkOption.NOFOLLOW_LINKS)) {
      throw NotWrittenException.because(name, "a link, a device or a pipe", "delete it");
    }
    FileChannel channel =
        FileChannel.open(
            name, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    try {
      while (System.nanoTime() < end) {
        if (channel.tryLock() != null) {
          return channel;
        }
        Thread.sleep(PAUSE_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
    channel.close();
    throw busy(file);
  }

  private static NotWrittenException busy(Path file) {
    return NotWrittenException.because(
        file,
        "another program has been writing in this folder for " + PATIENCE.toSeconds() + " s",
        "wait until it is done and try again");
  }

  @Override
  public void close() {
    try {
      // With the channel goes its lock.
      channel.close();
    } catch (IOException e) {
      // The system takes the lock off with the process at the latest; the file is written.
    } finally {
      IN_THIS_PROGRAM.unlock();
    }
  }
}
