package starchfilm.proof;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small disk of its own in a folder, to be filled up or made read-only. It takes root. */
public final class SmallDisk implements AutoCloseable {
  private final Path folder;

  private SmallDisk(Path folder) {
    this.folder = folder;
  }

  /**
   * Mounts it; the test is left out where it may not, and in the short form.
   *
   * @param folder an empty folder
   * @param size such as {@code 400k}
   * @return the disk, to be closed
   * @throws IOException where that fails
   */
  public static SmallDisk at(Path folder, String size) throws IOException {
    boolean isRoot =
        "root".equals(System.getProperty("user.name")) && Files.isExecutable(Path.of("/bin/mount"));
    assumeTrue(Kills.LONG && isRoot, "takes a disk of its own");
    run("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", folder.toString());
    return new SmallDisk(folder);
  }

  /**
   * Fills it up but for some bytes.
   *
   * @param free how many
   * @throws IOException where that fails
   */
  public void leave(long free) throws IOException {
    Path filler = folder.resolve("filler");
    Files.deleteIfExists(filler);
    long room = Files.getFileStore(folder).getUsableSpace() - free;
    Files.write(filler, new byte[(int) Math.max(0, room)]);
  }

  /**
   * Takes the right to write away.
   *
   * @throws IOException where that fails
   */
  public void makeReadOnly() throws IOException {
    run("mount", "-o", "remount,ro", folder.toString());
  }

  @Override
  public void close() throws IOException {
    run("umount", folder.toString());
  }

  private static void run(String... words) throws IOException {
    Process process = new ProcessBuilder(words).inheritIO().start();
    try {
      assumeTrue(process.waitFor() == 0, String.join(" ", words));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException(String.join(" ", words));
    }
  }
}
