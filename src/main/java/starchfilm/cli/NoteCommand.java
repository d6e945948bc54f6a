package starchfilm.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.saving.NewPhoto;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWriter;
import starchfilm.files.saving.NoteWriter.WrittenNote;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.PlateDoubtException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.files.saving.Undo;
import starchfilm.request.NoteRequest;

/** Writes what was weighed, measured or seen into a trial file. */
record NoteCommand(Asked asked) implements Callable<Integer> {
  private static final String COPIED =
      " is a copy without the place it was taken at; the picture itself stays as it is.";

  private Path file() {
    return asked.path("noted file.file").orElseThrow();
  }

  @Override
  public Integer call() throws NotWrittenException {
    Path trial = asked.resolve(file());
    Notebook notebook = NotebookReader.read(List.of(trial));
    NoteRequest.Subject subject =
        new NoteRequest.Subject(
            trial, asked.here(), asked.clock(), notebook.trials().stream().findFirst());
    NoteRequest request = NoteRequest.read(asked.entries(), subject);
    if (asked.has("take back.undo")) {
      takeBack(trial, request.notes());
      return ExitCodes.DONE;
    }
    if (asked.has("take back.list")) {
      NotedLine.of(TrialFileText.of(trial).text())
          .forEach(line -> say(line.name() + ": " + line.words()));
      return ExitCodes.DONE;
    }
    if (!request.notes().isEmpty()) {
      keep(trial, request, Optional.empty());
      return ExitCodes.DONE;
    }
    if (!notebook.faults().isEmpty()) {
      // A file at fault is fixed before anybody answers questions about it.
      throw CommandFailure.wrongInput(
          notebook.faults().stream().map(Fault::sentence).collect(Collectors.joining("\n")));
    }
    NoteRequest.SECTIONS.stream()
        .flatMap(section -> section.fields().stream())
        .filter(field -> asked.has(field.key()))
        .findFirst()
        .ifPresent(
            field -> {
              throw CommandFailure.wrongInput(
                  field.name()
                      + ": given without anything to note; add what to note, such as --weighed"
                      + " 655g");
            });
    NoteQuestions questions = new NoteQuestions(asked, subject);
    List<Note> answers = questions.ask();
    if (answers.isEmpty()) {
      say("Nothing noted.");
      return ExitCodes.DONE;
    }
    try {
      keep(trial, request.with(answers), Optional.of(questions));
      return ExitCodes.DONE;
    } catch (NotWrittenException slip) {
      if (answers.size() == 1) {
        throw slip;
      }
    }
    // One answer cannot be noted; the others were given all the same.
    int exitCode = ExitCodes.DONE;
    for (Note note : answers) {
      try {
        keep(trial, request.with(List.of(note)), Optional.of(questions));
      } catch (NotWrittenException slip) {
        asked.err().println("starchfilm: " + slip.getMessage());
        exitCode = ExitCodes.WRONG_INPUT;
      }
    }
    return exitCode;
  }

  /** Notes them; copies of pictures are kept only with their note. */
  private void keep(Path trial, NoteRequest request, Optional<NoteQuestions> questions)
      throws NotWrittenException {
    NewPhoto.NamedPhotos named =
        new NewPhoto(trial, request.pouredAt(), request.keepsPlace()).named(request.notes());
    Note.Several several = new Note.Several(named.notes());
    boolean isNoted = false;
    try {
      isNoted = isNoted(trial, several, questions);
    } finally {
      if (!isNoted) {
        named.discard();
      }
    }
    if (isNoted) {
      named.copies().forEach(copy -> say(besideTrial(trial, copy) + COPIED));
    }
  }

  /** Notes them, unless a weighing that gained may be of another plate and nobody says which. */
  private boolean isNoted(Path trial, Note.Several several, Optional<NoteQuestions> questions)
      throws NotWrittenException {
    try {
      write(trial, several);
    } catch (PlateDoubtException e) {
      Optional<Boolean> same =
          questions.orElseThrow(() -> unsaid(e)).samePlate(String.valueOf(e.told()));
      if (same.isEmpty()) {
        say("Nothing noted.");
        return false;
      }
      write(trial, several.onSamePlate(same.get()));
    }
    return true;
  }

  private CommandFailure unsaid(PlateDoubtException e) {
    return CommandFailure.wrongInput(
        """
        %s: %s; nothing was noted. Was it the same plate? Then add --same-plate. Another plate: \
        --same-plate=false keeps the weighing and leaves it out of the forecast\
        """
            .formatted(file(), e.told()));
  }

  private void takeBack(Path trial, List<Note> notes) throws NotWrittenException {
    if (!notes.isEmpty()) {
      throw CommandFailure.wrongInput("--undo: given with something to note; use it alone");
    }
    Undo.TakenBack back = Undo.last(trial, Optional.empty());
    say("Undone in " + file() + ":");
    back.lines().forEach(line -> say("  " + line));
    back.kept()
        .map(before -> besideTrial(trial, before) + "; a second --undo restores it.")
        .ifPresent(where -> say("The version with it is kept in " + where));
  }

  private void write(Path trial, Note.Several noted) throws NotWrittenException {
    WrittenNote written = NoteWriter.add(trial, noted);
    say("Noted in " + file() + ":");
    noted.notes().forEach(note -> say("  " + note.words()));
    written
        .before()
        .map(before -> "The version before is kept in " + besideTrial(trial, before) + ".")
        .ifPresent(this::say);
    written.notices().forEach(notice -> asked.err().println(notice.sentence()));
    if (written.trial().isEmpty()) {
      String check = ": noted, but the file has other faults; see starchfilm check ";
      asked.err().println(file() + check + file());
    }
  }

  private void say(String line) {
    asked.out().println(line);
  }

  /** Beside the file as typed, or, where that is a link, beside what it leads to. */
  private Path besideTrial(Path trial, Path before) {
    Path beside = file().resolveSibling(String.valueOf(before.getFileName()));
    return Files.isSymbolicLink(trial) ? before : beside;
  }
}
