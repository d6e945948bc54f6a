package starchfilm.files.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import starchfilm.files.json.PackedText;

/** A folder of invented trials, packed with the program, to look at what a full one is like. */
public final class ExampleFolder {
  /** The name of the folder among the trials. */
  public static final String NAME = "example";

  private static final String PACKED = "/formulations/garden/";

  /** A packed folder cannot be listed everywhere. */
  static final List<String> FILES =
      List.of(
          "1-thick-tray.json",
          "2-little-glycerol.json",
          "3-much-glycerol.json",
          "4-blend.json",
          "5-blend-in-the-shed.json",
          "6-thin-by-the-fan.json",
          "shed-april.csv",
          "workshop.json");

  private ExampleFolder() {}

  /**
   * Copies it into a folder of its own.
   *
   * @param root the folder of the trials
   * @throws NotWrittenException where there is something of that name, or nothing can be written
   */
  public static void copyInto(Path root) throws NotWrittenException {
    Path folder = root.resolve(NAME);
    try {
      Files.createDirectory(folder);
    } catch (IOException e) {
      throw Files.exists(folder, LinkOption.NOFOLLOW_LINKS)
          ? NotWrittenException.because(
              folder, "a file or folder that is there already", "rename it, and try again")
          : NotWrittenException.because(folder, e);
    }
    for (String file : FILES) {
      SafeFile.create(folder.resolve(file), packed(file));
    }
  }

  /**
   * Returns whether it lies there, or what is left of it.
   *
   * @param root the folder of the trials
   * @return true where one of its files is as it was packed
   */
  public static boolean isIn(Path root) {
    return FILES.stream().anyMatch(file -> isUntouched(root, file));
  }

  /**
   * Deletes its files; what was changed meanwhile is somebody's own and stays.
   *
   * @param root the folder of the trials
   * @return how many files stay
   * @throws NotWrittenException where a file cannot be deleted
   */
  public static long takeOutOf(Path root) throws NotWrittenException {
    Path folder = root.resolve(NAME);
    try {
      for (String file : FILES) {
        if (isUntouched(root, file)) {
          Files.delete(folder.resolve(file));
        }
      }
      Files.deleteIfExists(folder.resolve(FolderLock.NAME));
      long left;
      try (var files = Files.list(folder)) {
        left = files.count();
      }
      if (left == 0) {
        Files.delete(folder);
      }
      return left;
    } catch (IOException e) {
      throw NotWrittenException.because(folder, e);
    }
  }

  private static boolean isUntouched(Path root, String file) {
    Path copied = root.resolve(NAME).resolve(file);
    if (!Files.isRegularFile(copied, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try {
      byte[] packed = packed(file);
      return Files.size(copied) == packed.length
          && Arrays.equals(Files.readAllBytes(copied), packed);
    } catch (IOException e) {
      // What cannot be read is not taken for ours.
      return false;
    }
  }

  private static byte[] packed(String file) {
    return PackedText.bytes(ExampleFolder.class, PACKED + file);
  }
}
