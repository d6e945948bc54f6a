package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;

/** The trial files a command was given. */
final class TrialFiles {
  private TrialFiles() {}

  /**
   * Reads files and folders as typed.
   *
   * @param typed relative to the working directory, or absolute
   * @param surroundings where the working directory is known
   * @return the trials and everything wrong
   */
  static Notebook read(List<Path> typed, CommandContext surroundings) {
    return NotebookReader.read(typed.stream().map(surroundings::resolve).toList());
  }
}
