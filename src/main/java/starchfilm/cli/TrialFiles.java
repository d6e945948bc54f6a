package starchfilm.cli;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.SoundPart;
import starchfilm.forecast.Oddity;
import starchfilm.learning.Workshops;
import starchfilm.report.TrialForecasts;
import starchfilm.report.words.OddityWords;

/**
 * The trials a command was given; one some of whose notes are wrong is among them, without those.
 */
record TrialFiles(Asked asked, Notebook notebook) {
  /** Remarks on a folder that a command about something else repeats; check has them all. */
  private static final int MOST_REMARKS = 20;

  private static final int MOST_COPIES = 10;

  /** Reads files and folders as typed. */
  static TrialFiles read(Asked asked, List<Path> typed) {
    return new TrialFiles(asked, SoundPart.with(checked(asked, typed)));
  }

  /** Reads them as they stand: a file with a fault gives no trial. */
  static Notebook checked(Asked asked, List<Path> typed) {
    return NotebookReader.read(typed.stream().map(asked::resolve).toList());
  }

  List<Trial> trials() {
    return notebook.trials();
  }

  /** Says what is wrong, and which of these trials are used all the same. */
  void tellFaults() {
    FirstFaults.sentences(notebook.faults()).forEach(asked.err()::println);
    Set<String> faulty = faultyFiles();
    trials().stream()
        .map(trial -> trial.file().toString())
        .filter(faulty::contains)
        .map(file -> file + ": the rest of this trial is used, without what is wrong.")
        .forEach(asked.err()::println);
  }

  /** Whether each file with a fault gave a trial all the same. */
  boolean isEachUsed() {
    Set<String> unused = faultyFiles();
    trials().forEach(trial -> unused.remove(trial.file().toString()));
    return unused.isEmpty();
  }

  private Set<String> faultyFiles() {
    return notebook.faults().stream()
        .map(Fault::file)
        .collect(Collectors.toCollection(HashSet::new));
  }

  /**
   * What to look at though the trials could be read.
   *
   * @return notices, once each though several trials share a log, and what is odd about recipes, a
   *     sentence each
   */
  static List<String> remarks(Notebook notebook) {
    return Stream.concat(
            notebook.trials().stream()
                .flatMap(
                    trial ->
                        OddityWords.of(Oddity.of(trial)).stream()
                            .map(odd -> trial.file().getFileName() + ": " + odd)),
            notebook.notices().stream().map(Notice::sentence).distinct())
        .toList();
  }

  /** Faults and remarks of a folder, before a command about all of it says its own. */
  void tell() {
    tellFaults();
    tellFirst(remarks(notebook), MOST_REMARKS, "remarks");
  }

  /** Which of them are one plate in two files. */
  void tellCopies() {
    tellFirst(Workshops.copies(trials()), MOST_COPIES, "files that repeat another");
  }

  private void tellFirst(List<String> sentences, int most, String what) {
    sentences.stream().limit(most).forEach(asked.err()::println);
    if (sentences.size() > most) {
      int more = sentences.size() - most;
      asked.err().println(more + " more " + what + "; the command check has them all.");
    }
  }

  /**
   * Forecasts them, and says which cannot be.
   *
   * @param made forecasts trials
   * @param purpose what for, such as {@code to compare}; refused where there is none
   */
  TrialForecasts forecasts(Function<List<Trial>, TrialForecasts> made, String purpose) {
    TrialForecasts forecasts = made.apply(trials());
    forecasts.failures().forEach(asked.err()::println);
    if (forecasts.done().isEmpty()) {
      throw forecasts.failures().isEmpty()
          ? CommandFailure.wrongInput(
              (notebook.putAway().isEmpty()
                      ? "no trial without a fault "
                      : "no trial that is sound and not put away ")
                  + purpose
                  + "; nothing written.")
          : CommandFailure.notComputed("no trial could be forecast; nothing written.");
    }
    return forecasts;
  }

  /** The exit code of a command that used what it could of them. */
  int exitCode(boolean allComputed) {
    if (!notebook.faults().isEmpty()) {
      return ExitCodes.WRONG_INPUT;
    }
    return allComputed ? ExitCodes.DONE : ExitCodes.NOT_COMPUTED;
  }
}
