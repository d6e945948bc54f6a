package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import starchfilm.files.notebook.Notebook;
import starchfilm.request.TrialQuestion;

/**
 * The one trial file that a command is about, if one was named.
 *
 * @param base the trial; empty where it is written as options alone
 * @param exitCode of a command that answers for it: notes that are wrong were left out, or none
 */
record OneTrial(Optional<TrialQuestion.Base> base, int exitCode) {

  /**
   * Reads it; faults and notices go to standard error.
   *
   * @param asked what was asked
   * @param key the field that names the file, if one was named
   * @param command the command's name, for the sentences
   * @param needs what it needs at least, for the sentence
   * @return the trial
   */
  static OneTrial read(Asked asked, String key, String command, String needs) {
    CommandContext surroundings = asked.surroundings();
    Optional<Path> named = asked.path(key);
    if (named.isEmpty()) {
      if (!TrialQuestion.isWritten(asked.entries())) {
        throw CommandFailure.wrongInput(command + " needs " + needs + ".");
      }
      return new OneTrial(Optional.empty(), ExitCodes.DONE);
    }
    Path file = named.get();
    Notebook notebook = TrialFiles.read(List.of(file), surroundings);
    TrialFiles.tellFaults(notebook, surroundings);
    notebook.notices().forEach(notice -> surroundings.err().println(notice.sentence()));
    if (!TrialFiles.isEachUsed(notebook)) {
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
    return new OneTrial(base, TrialFiles.exitCode(notebook, true));
  }
}
