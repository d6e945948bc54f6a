package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;
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
   * @param needs what the command needs at least, for the sentence
   * @return the trial, its fields only where something is written over it
   */
  static OneTrial read(Asked asked, String needs) {
    Optional<Path> file = asked.path("trial file.file");
    if (file.isPresent()) {
      return read(asked, file.get(), trial -> TrialQuestion.Base.of(trial, asked.entries()));
    }
    if (!TrialQuestion.isWritten(asked.entries())) {
      throw CommandFailure.wrongInput(asked.command() + " needs " + needs + ".");
    }
    return new OneTrial(Optional.empty(), ExitCodes.DONE);
  }

  /** Reads one with the fields of its file in any case. */
  static OneTrial whole(Asked asked, Path file) {
    return read(asked, file, TrialQuestion.Base::of);
  }

  private static OneTrial read(
      Asked asked, Path file, Function<Trial, Optional<TrialQuestion.Base>> as) {
    TrialFiles files = TrialFiles.read(asked, List.of(file));
    files.tellFaults();
    files.notebook().notices().forEach(notice -> asked.err().println(notice.sentence()));
    if (!files.isEachUsed()) {
      throw CommandFailure.wrongInput("nothing was done, because " + file + " cannot be used.");
    }
    if (files.trials().size() != 1) {
      throw CommandFailure.wrongInput(
          "%s takes one trial, and %s holds %d."
              .formatted(asked.command(), file, files.trials().size()));
    }
    Optional<TrialQuestion.Base> base = as.apply(files.trials().get(0));
    if (base.isEmpty()) {
      throw CommandFailure.wrongInput(file + ": changed while it was read; try again.");
    }
    return new OneTrial(base, files.exitCode(true));
  }
}
