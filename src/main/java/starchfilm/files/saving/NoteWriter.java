package starchfilm.files.saving;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Notice;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.FileText;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.PlateDoubt;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.NotedLine.NoteKind;
import starchfilm.files.saving.SafeFile.WrittenFile;

/**
 * Writes notes into trial files.
 *
 * <p>The note is put into the text as it stands, the result is read as every trial is, and only if
 * that finds no new fault is it written, by {@link SafeFile}. So a note that cannot be, such as a
 * film heavier than the paste that was poured, leaves the file untouched.
 */
public final class NoteWriter {
  private final Path file;
  private final Note note;
  private final String shown;
  private final List<Notice> notices = new ArrayList<>();
  private Optional<Trial> trial = Optional.empty();

  private NoteWriter(Path file, Note note) {
    this.file = file;
    this.note = note;
    this.shown = PlainLine.of(file);
  }

  /**
   * The outcome of a note.
   *
   * @param trial the trial as it now stands; empty where the file has other faults, from before
   * @param notices what its owner should know of the file
   * @param before where the version before is kept; empty where nothing changed
   * @param version the version the file has now, to take the note back by
   */
  public record WrittenNote(
      Optional<Trial> trial, List<Notice> notices, Optional<Path> before, String version) {
    public WrittenNote {
      notices = List.copyOf(notices);
    }
  }

  /**
   * Adds a note to a trial file.
   *
   * @param file the trial file; it must exist
   * @param note what to add
   * @return the trial as it now stands
   * @throws PlateDoubtException where a weighing seems to be of another plate and the note does not
   *     say which it was; the file is as it was
   * @throws NotWrittenException where the note cannot be or the file cannot be written; the file is
   *     as it was
   */
  public static WrittenNote add(Path file, Note note) throws NotWrittenException {
    if (!Files.exists(file)) {
      throw NotWrittenException.because(file, "there is no such file", "check its name and folder");
    }
    if (!Files.isRegularFile(file)) {
      String what =
          Files.isDirectory(file) ? "it is a folder" : "it is neither a file nor a folder";
      throw NotWrittenException.because(file, what, "name one trial file");
    }
    for (Note one : note.notes()) {
      if (one instanceof Note.Added line && line.kind() == NoteKind.PHOTO) {
        Picture.beside(file, line.node().shown("file"));
      }
    }
    return new NoteWriter(file, note).written();
  }

  private WrittenNote written() throws NotWrittenException {
    WrittenFile written = SafeFile.rewrite(file, before -> changed(before.orElse(new byte[0])));
    written.remarks().forEach(remark -> notices.add(Notice.of(file, remark)));
    return new WrittenNote(trial, notices, written.before(), written.version());
  }

  /** The file with the note; asked again where it changes meanwhile. */
  private byte[] changed(byte[] before) throws NotWrittenException {
    Findings old = new Findings(shown);
    try {
      if (before.length > TrialReader.MAX_BYTES) {
        throw new UnreadableFileException("more than 2 MB", "at most 2 MB", "check the file");
      }
      String text = FileText.utf8(before);
      TrialReader reader = new TrialReader();
      Optional<Trial> was = reader.read(text, file, old);
      Findings now = new Findings(shown);
      boolean isTrial = reader.readsAsTrial(text);
      String after = isTrial ? note.in(text) : text;
      trial = reader.read(after, file, now);
      List<Fault> fresh = newFaults(old, now);
      if (!fresh.isEmpty() || !isTrial) {
        throw new NotWrittenException(fresh.isEmpty() ? old.faults() : fresh);
      }
      if (was.isPresent()) {
        refuseDoubt(was.get(), text);
      }
      Set<String> earlier = old.notices().stream().map(Notice::text).collect(Collectors.toSet());
      notices.clear();
      now.notices().stream().filter(n -> !earlier.contains(n.text())).forEach(notices::add);
      return (FileText.mark(before) + after).getBytes(StandardCharsets.UTF_8);
    } catch (UnreadableFileException e) {
      old.fault(e);
      throw new NotWrittenException(old.faults());
    }
  }

  /** Asks first where a new weighing is of another plate by the looks of it. */
  private void refuseDoubt(Trial was, String text)
      throws UnreadableFileException, PlateDoubtException {
    // Read as if it were the same plate: otherwise the reader leaves the doubtful ones out.
    Note same = note.onSamePlate(true);
    if (same.equals(note)) {
      return;
    }
    Optional<Trial> asked = new TrialReader().read(same.in(text), file, new Findings(shown));
    if (asked.isEmpty()) {
      return;
    }
    for (int plate = 1; plate <= asked.get().plates(); plate++) {
      List<Weighing> earlier = was.ofPlate(plate).seen().weighings();
      List<Weighing> weighings = asked.get().ofPlate(plate).seen().weighings();
      for (int i = 1; i < weighings.size(); i++) {
        Weighing before = weighings.get(i - 1);
        Weighing next = weighings.get(i);
        boolean fresh = !earlier.contains(before) || !earlier.contains(next);
        if (fresh && PlateDoubt.isDoubtful(before, next)) {
          throw new PlateDoubtException(shown, PlateDoubt.told(before, next));
        }
      }
    }
  }

  /** The faults that were not there before; lines may have moved. */
  private static List<Fault> newFaults(Findings old, Findings now) {
    Set<String> known = new HashSet<>();
    old.faults().forEach(fault -> known.add(withoutPlace(fault)));
    return now.faults().stream().filter(fault -> !known.contains(withoutPlace(fault))).toList();
  }

  private static String withoutPlace(Fault fault) {
    return Fault.of(fault.file(), fault.field(), fault.given(), fault.allowed(), fault.mend())
        .sentence();
  }
}
