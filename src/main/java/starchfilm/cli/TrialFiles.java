package starchfilm.cli;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.report.words.OddityWords;

/** The trial files a command was given. */
final class TrialFiles {
  /** Remarks on a folder that a command about something else repeats; check has them all. */
  private static final int MOST_REMARKS = 20;

  private TrialFiles() {}

  /**
   * Reads files and folders as typed; a trial some of whose notes are wrong is among the trials,
   * without those notes.
   *
   * @param typed relative to the working directory, or absolute
   * @param surroundings where the working directory is known
   */
  static Notebook read(List<Path> typed, CommandContext surroundings) {
    return SoundPart.with(checked(typed, surroundings));
  }

  /** Reads them as they stand: a file with a fault gives no trial. */
  static Notebook checked(List<Path> typed, CommandContext surroundings) {
    return NotebookReader.read(typed.stream().map(surroundings::resolve).toList());
  }

  /** Says what is wrong, and which of these trials are used all the same. */
  static void tellFaults(Notebook notebook, CommandContext surroundings) {
    FirstFaults.sentences(notebook.faults()).forEach(surroundings.err()::println);
    Set<String> faulty = faultyFiles(notebook);
    notebook.trials().stream()
        .map(trial -> trial.file().toString())
        .filter(faulty::contains)
        .forEach(
            file ->
                surroundings
                    .err()
                    .println(file + ": the rest of this trial is used, without what is wrong."));
  }

  /** Whether each file with a fault gave a trial all the same. */
  static boolean isEachUsed(Notebook notebook) {
    Set<String> unused = faultyFiles(notebook);
    notebook.trials().forEach(trial -> unused.remove(trial.file().toString()));
    return unused.isEmpty();
  }

  private static Set<String> faultyFiles(Notebook notebook) {
    return notebook.faults().stream()
        .map(Fault::file)
        .collect(Collectors.toCollection(HashSet::new));
  }

  /**
   * What to look at though the trials could be read.
   *
   * @return notices, and what is odd about recipes, a sentence each
   */
  static List<String> remarks(Notebook notebook) {
    return Stream.concat(
            notebook.trials().stream()
                .flatMap(
                    trial ->
                        OddityWords.of(Oddity.of(trial)).stream()
                            .map(odd -> trial.file().getFileName() + ": " + odd)),
            notebook.notices().stream().map(Notice::sentence))
        .toList();
  }

  /**
   * Faults and remarks of a folder, before a command about all of it says its own.
   *
   * @param surroundings where they are printed
   */
  static void tell(Notebook notebook, CommandContext surroundings) {
    tellFaults(notebook, surroundings);
    List<String> remarks = remarks(notebook);
    remarks.stream().limit(MOST_REMARKS).forEach(surroundings.err()::println);
    if (remarks.size() > MOST_REMARKS) {
      surroundings
          .err()
          .println(
              remarks.size() - MOST_REMARKS + " more remarks; the command check has them all.");
    }
  }

  /** What was learnt beside some trials; a file of it that cannot be read is reported. */
  static Workshops workshops(List<Trial> trials, CommandContext surroundings) {
    Workshops workshops = new Workshops(surroundings.clock());
    workshops.faults(trials).forEach(fault -> surroundings.err().println(fault.sentence()));
    return workshops;
  }

  /** What a trial's forecast has from the trials beside it; nothing where nothing was learnt. */
  static List<String> learnt(Workshop workshop, Trial trial) {
    return workshop.learnt().rooms().isEmpty()
        ? List.of()
        : List.of("Learnt from your trials: " + lesson(workshop, trial) + ".");
  }

  private static String lesson(Workshop workshop, Trial trial) {
    return workshop.learnt().rooms().stream()
        .filter(room -> room.isCalled(trial.casting().place().name()))
        .map(RoomLearnt::sentence)
        .findFirst()
        .orElse("what your rooms have in common; nothing is known about this room yet");
  }

  /** The exit code of a command that used what it could of these trials. */
  static int exitCode(Notebook notebook, boolean allComputed) {
    if (!notebook.faults().isEmpty()) {
      return ExitCodes.WRONG_INPUT;
    }
    return allComputed ? ExitCodes.DONE : ExitCodes.NOT_COMPUTED;
  }
}
