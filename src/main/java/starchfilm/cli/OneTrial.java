package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.notebook.Notebook;
import starchfilm.request.Entries;
import starchfilm.request.TrialQuestion;

/** The one trial file that a command is about, if one was named. */
final class OneTrial {
  private OneTrial() {}

  /**
   * Reads it; faults and notices go to standard error.
   *
   * @param file the file, if one was named
   * @param entries what was written beside it
   * @param command the command's name, for the sentences
   * @param needs what it needs at least, for the sentence
   * @param surroundings where the file lies
   * @return the file; empty where the trial is written as options alone
   */
  static Optional<TrialQuestion.Base> read(
      @Nullable Path file,
      Entries entries,
      String command,
      String needs,
      CommandContext surroundings) {
    if (file == null) {
      if (!TrialQuestion.isWritten(entries)) {
        throw CommandFailure.wrongInput(command + " needs " + needs + ".");
      }
      return Optional.empty();
    }
    Notebook notebook = TrialFiles.read(List.of(file), surroundings);
    FirstFaults.sentences(notebook.faults()).forEach(surroundings.err()::println);
    notebook.notices().forEach(notice -> surroundings.err().println(notice.sentence()));
    if (!notebook.faults().isEmpty()) {
      throw CommandFailure.wrongInput("no forecast: the trial has a fault.");
    }
    if (notebook.trials().size() != 1) {
      throw CommandFailure.wrongInput(
          command + " takes one trial, and " + file + " holds " + notebook.trials().size() + ".");
    }
    Optional<TrialQuestion.Base> base = TrialQuestion.Base.of(notebook.trials().get(0));
    if (base.isEmpty()) {
      throw CommandFailure.wrongInput(file + ": changed while it was read; try again.");
    }
    return base;
  }
}
