package starchfilm.learning;

import java.nio.file.Path;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.PlainLine;

/** Names trials by their file from the folder of the workshop file. */
final class TrialName {
  private TrialName() {}

  /** The file's name from a folder, the same on every system; in full where it lies elsewhere. */
  static String from(Path folder, Trial trial) {
    Path home = folder.toAbsolutePath().normalize();
    Path file = trial.file().toAbsolutePath().normalize();
    Path shown = file.startsWith(home) ? home.relativize(file) : file;
    return PlainLine.of(shown);
  }
}
