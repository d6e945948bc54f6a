package starchfilm.files.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A trial file that is not there yet.
 *
 * @param name what its maker calls the trial
 * @param text the text of the file; it must be a sound trial
 */
public record NewTrialFile(String name, String text) {

  /**
   * Writes trials that belong together, each under a name that is free, or none of them.
   *
   * @param trials the trials
   * @param log the log of the room that they name, copied beside them unless it is there already
   * @param folder where they go
   * @return their files, in the order of the trials
   * @throws NotWrittenException where one cannot be written, or what was written not be taken away
   */
  public static List<Path> write(List<NewTrialFile> trials, Optional<Path> log, Path folder)
      throws NotWrittenException {
    List<Path> written = new ArrayList<>();
    try {
      if (log.isPresent()) {
        copied(log.get(), folder).ifPresent(written::add);
      }
      int before = written.size();
      for (NewTrialFile trial : trials) {
        written.add(TrialFileText.create(folder, trial.name(), trial.text()));
      }
      return List.copyOf(written.subList(before, written.size()));
    } catch (NotWrittenException e) {
      SafeFile.delete(written);
      throw e;
    }
  }

  private static Optional<Path> copied(Path log, Path folder) throws NotWrittenException {
    Path copy = folder.resolve(String.valueOf(log.getFileName()));
    try {
      if (SafeFile.create(copy, Files.readAllBytes(log))) {
        return Optional.of(copy);
      }
      if (Files.mismatch(copy, log) >= 0) {
        throw NotWrittenException.because(
            copy.getFileName(),
            "another log of this name in the folder",
            "rename one of the two, or choose another folder");
      }
      return Optional.empty();
    } catch (IOException e) {
      throw NotWrittenException.because(log, e);
    }
  }
}
