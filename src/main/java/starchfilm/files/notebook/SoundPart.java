package starchfilm.files.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located;
import starchfilm.files.json.UnreadableFileException;

/**
 * The sound part of a trial file some of whose notes are wrong: the trial without those notes. What
 * went into the pot and where it dries must be sound, for everything else rests on it.
 */
public final class SoundPart {
  private static final Pattern NOTE =
      Pattern.compile(
          "((?:weighings|plates|dry_thickness_um|faults|pulls|remarks|photos|photo_notes)\\[\\d+]).*");

  /** Without one wrong note another may show that hid behind it. */
  private static final int ROUNDS = 4;

  private static final String NO_NOTE = "";

  private SoundPart() {}

  /**
   * The notebook with the sound parts of its faulty files among the trials; the faults stay.
   *
   * @param notebook what was read
   * @return the same with more trials, in their order
   */
  public static Notebook with(Notebook notebook) {
    Set<Path> faulty =
        notebook.faults().stream()
            .map(fault -> Path.of(fault.file()))
            .filter(file -> String.valueOf(file.getFileName()).endsWith(".json"))
            .collect(Collectors.toCollection(TreeSet::new));
    List<Trial> trials = new ArrayList<>(notebook.trials());
    faulty.forEach(file -> of(file).ifPresent(trials::add));
    if (trials.size() == notebook.trials().size()) {
      return notebook;
    }
    trials.sort(NotebookReader.ORDER);
    return new Notebook(
        trials, notebook.putAway(), notebook.jars(), notebook.faults(), notebook.notices());
  }

  private static Optional<Trial> of(Path file) {
    try {
      String text = FileText.utf8(FileText.bytes(file, TrialReader.MAX_BYTES));
      return new TrialReader().read(fields(TrialReader.fields(text), file), file, new Findings(""));
    } catch (UnreadableFileException e) {
      // Its fault was reported when it was read; there is no part that could be sound.
      return Optional.empty();
    }
  }

  /**
   * The fields of a trial file without its wrong notes.
   *
   * @param trial the fields
   * @param file where they are from
   * @return as many of them as make a trial; all, where something else is wrong
   */
  public static Located.ObjectValue fields(Located.ObjectValue trial, Path file) {
    Located.ObjectValue rest = trial;
    for (int round = 0; round < ROUNDS; round++) {
      Findings findings = new Findings("");
      if (new TrialReader().read(rest, file, findings).isPresent()) {
        return rest;
      }
      Set<String> wrong =
          findings.faults().stream().map(SoundPart::note).collect(Collectors.toSet());
      if (wrong.contains(NO_NOTE)) {
        return trial;
      }
      rest = without(rest, wrong);
    }
    return rest;
  }

  private static String note(Fault fault) {
    Matcher note = NOTE.matcher(fault.field());
    return note.matches() ? note.group(1) : NO_NOTE;
  }

  private static Located.ObjectValue without(Located.ObjectValue trial, Set<String> wrong) {
    Located.ObjectValue rest = trial;
    for (Map.Entry<String, Located.Member> field : trial.members().entrySet()) {
      if (field.getValue().value() instanceof Located.ListValue notes) {
        // By its place in the file: a round before may have taken out what stood ahead of it.
        List<Located> kept =
            notes.entries().stream().filter(note -> !wrong.contains(note.place().path())).toList();
        if (kept.size() < notes.entries().size()) {
          rest = rest.with(field.getKey(), new Located.ListValue(notes.place(), kept));
        }
      }
    }
    return rest;
  }
}
