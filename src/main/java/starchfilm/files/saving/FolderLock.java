package starchfilm.files.saving;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

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

  private final FileChannel channel;
  private final FileLock lock;

  private FolderLock(FileChannel channel, FileLock lock) {
    this.channel = channel;
    this.lock = lock;
  }

  /**
   * Waits for the lock.
   *
   * @param file a file in the folder
   * @return the lock, to be closed
   * @throws NotWrittenException where others hold it for longer than {@link #PATIENCE}
   * @throws IOException where the folder cannot be written to
   */
  static FolderLock around(Path file) throws IOException, NotWrittenException {
    FileChannel channel =
        FileChannel.open(
            file.resolveSibling(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      long end = System.nanoTime() + PATIENCE.toNanos();
      while (System.nanoTime() < end) {
        FileLock lock = tryLock(channel);
        if (lock != null) {
          return new FolderLock(channel, lock);
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
    throw NotWrittenException.because(
        file,
        "another program has been writing in this folder for " + PATIENCE.toSeconds() + " s",
        "wait until it is done and try again");
  }

  /** Another process holding the lock gives null, another thread of this one an exception. */
  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  @Override
  public void close() throws IOException {
    lock.release();
    channel.close();
  }
}
