package starchfilm.files.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located.Place;

/** Finds files that a trial file names: only beside it or in folders below. */
public final class BesideFile {
  private BesideFile() {}

  /**
   * The file that is meant.
   *
   * @param trialFile the trial file
   * @param name its name as written, with / between folders
   * @param place where the name stands
   * @param findings takes the fault
   * @return the file, whether it exists or not; empty where it lies outside
   */
  public static Optional<Path> find(Path trialFile, String name, Place place, Findings findings) {
    try {
      Path folder = trialFile.toAbsolutePath().normalize().getParent();
      Path named = Path.of(name);
      if (folder != null && !named.isAbsolute() && !name.contains("\\")) {
        Path file = folder.resolve(named).normalize();
        if (file.startsWith(folder) && !leavesByLink(file, folder)) {
          findings.beside(file);
          return Optional.of(file);
        }
      }
    } catch (InvalidPathException e) {
      // Falls through to the fault: such a name cannot be a file beside this one.
    }
    findings.fault(
        place,
        '"' + name + '"',
        "the name of a file beside this one or in a folder below it",
        "move the file there and write its name with /");
    return Optional.empty();
  }

  /**
   * Returns whether a link leads out of a folder on the way to a file in it.
   *
   * @param file the file, whether it exists or not
   * @param folder the folder, likewise
   */
  public static boolean leavesByLink(Path file, Path folder) {
    try {
      Path there = file;
      while (!Files.exists(there) && !there.equals(folder)) {
        there = there.resolve("..").normalize();
      }
      return Files.exists(there) && !there.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException e) {
      return true;
    }
  }
}
