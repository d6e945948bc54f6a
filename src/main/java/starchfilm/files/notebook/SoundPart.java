package starchfilm.files.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;

/**
 * What is sound of a trial file some of whose notes are wrong: the trial without those notes. What
 * went into the pot and where it dries must be sound, for everything else rests on it.
 */
public final class SoundPart {
  private static final Pattern NOTE =
      Pattern.compile(
          "((weighings|plates|dry_thickness_um|faults|pulls|remarks|photos|photo_notes)\\[\\d+]).*");

  /** Without one wrong note another may show that hid behind it. */
  private static final int ROUNDS = 4;

  private static final long MAX_BYTES = TrialReader.MAX_BYTES;

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
      Located root = new LocatedReader().read(FileText.utf8(FileText.bytes(file, MAX_BYTES)));
      if (root instanceof Located.ObjectValue trial) {
        return new TrialReader().read(fields(trial, file), file, new Findings(""));
      }
    } catch (UnreadableFileException e) {
      // Its fault was reported when it was read; there is no part that could be sound.
    }
    return Optional.empty();
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
      Map<String, Set<String>> wrong = wrongNotes(findings.faults());
      if (wrong.isEmpty()) {
        return trial;
      }
      rest = without(rest, wrong);
    }
    return rest;
  }

  /** By list, which of its notes are wrong; nothing where something else is wrong too. */
  private static Map<String, Set<String>> wrongNotes(List<Fault> faults) {
    Map<String, Set<String>> wrong = new LinkedHashMap<>();
    for (Fault fault : faults) {
      Matcher note = NOTE.matcher(fault.field());
      if (!note.matches()) {
        return Map.of();
      }
      wrong.computeIfAbsent(note.group(2), list -> new TreeSet<>()).add(note.group(1));
    }
    return wrong;
  }

  private static Located.ObjectValue without(
      Located.ObjectValue trial, Map<String, Set<String>> wrong) {
    Located.ObjectValue rest = trial;
    for (Map.Entry<String, Set<String>> list : wrong.entrySet()) {
      Located.Member member = trial.members().get(list.getKey());
      if (member != null && member.value() instanceof Located.ListValue notes) {
        // By its place in the file: a round before may have taken out what stood ahead of it.
        List<Located> kept =
            notes.entries().stream()
                .filter(note -> !list.getValue().contains(note.place().path()))
                .toList();
        rest = rest.with(list.getKey(), new Located.ListValue(notes.place(), kept));
      }
    }
    return rest;
  }
}
