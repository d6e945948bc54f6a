package starchfilm.files.notebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Notice;
import starchfilm.files.findings.PlainLine;

/**
 * Reads trial files into a notebook.
 *
 * <p>A folder stands for every {@code *.json} file in it and in the folders below, hidden ones,
 * {@link #WORKSHOP_FILE} and kept jars apart; links to folders are not followed. A file named twice
 * is read once. The order of the result does not depend on the file system. A file with a fault
 * gives no trial, the others go through.
 */
public final class NotebookReader {
  /** The file beside the trials in which the program keeps what it learned from them. */
  public static final String WORKSHOP_FILE = "workshop.json";

  private static final int MAX_DEPTH = 8;

  static final Comparator<Trial> ORDER =
      Comparator.comparing((Trial t) -> t.pouredAt().isEmpty())
          .thenComparing(t -> t.pouredAt().orElse(java.time.LocalDateTime.MIN))
          .thenComparing(Trial::name)
          .thenComparing(t -> PlainLine.of(t.file()));

  /** The notebook of a folder without trial files. */
  public static final Notebook NOTHING =
      new Notebook(List.of(), List.of(), List.of(), List.of(), List.of());

  private final List<Path> named;
  private final Map<Path, Path> files = new LinkedHashMap<>();
  private final Map<Path, Path> jars = new LinkedHashMap<>();
  private final List<Trial> trials = new ArrayList<>();
  private final List<Trial> putAway = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();

  private NotebookReader(List<Path> named) {
    this.named = named;
  }

  /**
   * Reads files and folders.
   *
   * @param filesOrFolders files or folders; whatever is wrong with them is in the result
   * @return the trials and the faults
   */
  public static Notebook read(List<Path> filesOrFolders) {
    return read(filesOrFolders, NotebookReader::fresh);
  }

  /**
   * The reading of a file.
   *
   * @param trial the trial, if the file has no fault
   * @param findings what turned up; not to be added to
   */
  public record TrialReading(Optional<Trial> trial, Findings findings) {}

  static TrialReading fresh(Path file) {
    Findings findings = new Findings(PlainLine.of(file));
    return new TrialReading(new TrialReader().read(file, findings), findings);
  }

  /**
   * Reads files and folders, each file in a way of one's own.
   *
   * @param filesOrFolders as above
   * @param reader reads a file, such as one that keeps what it read; called from several threads at
   *     once
   * @return the trials and the faults
   */
  public static Notebook read(List<Path> filesOrFolders, Function<Path, TrialReading> reader) {
    NotebookReader notebook = new NotebookReader(filesOrFolders);
    filesOrFolders.forEach(notebook::name);
    List<Path> files = List.copyOf(notebook.files.values());
    List<TrialReading> readings = files.parallelStream().map(reader).toList();
    IntStream.range(0, files.size()).forEach(i -> notebook.add(files.get(i), readings.get(i)));
    notebook.trials.sort(ORDER);
    notebook.putAway.sort(ORDER);
    List<JarLevel> levels = notebook.levels();
    return new Notebook(
        notebook.trials, notebook.putAway, levels, notebook.faults, notebook.notices);
  }

  /** Takes a file, or those of a folder, for reading. */
  private void name(Path named) {
    if (Files.isDirectory(named)) {
      int before = faults.size();
      List<Path> found = new ArrayList<>();
      collect(named, MAX_DEPTH, found);
      found.sort(Comparator.comparing(PlainLine::of));
      List<Path> kept = KeptJar.in(named);
      if (found.isEmpty() && kept.isEmpty() && faults.size() == before) {
        String mend = "name the folder that holds your trials";
        fault(named, "a folder without trial files", "at least one file *.json", mend);
      }
      found.forEach(file -> files.putIfAbsent(real(file), file));
      kept.forEach(jar -> jars.putIfAbsent(real(jar), jar));
    } else if (isOwn(named) && Files.exists(named)) {
      boolean isJar = KeptJar.isJar(named);
      if (isJar) {
        jars.putIfAbsent(real(named), named);
      }
      String kept = isJar ? "a jar kept by assay" : "what learn keeps";
      notices.add(Notice.of(named, kept + ", not a trial; skipped"));
    } else {
      files.putIfAbsent(real(named), named);
    }
  }

  private void add(Path file, TrialReading reading) {
    Findings findings = reading.findings();
    if (findings.isPutAway()) {
      reading.trial().ifPresent(putAway::add);
      if (!named.contains(file)) {
        return;
      }
      String until =
          "put away: lists, comparisons and learning leave it out until it is fetched back";
      notices.add(Notice.of(file, until));
    }
    reading.trial().ifPresent(trials::add);
    findings.faults().stream()
        .sorted(
            Comparator.comparingInt((Fault f) -> f.place().line())
                .thenComparingInt(f -> f.place().column()))
        .forEach(faults::add);
    notices.addAll(findings.notices());
  }

  /** The jars of the folders that were named, and those that the trials name, with their levels. */
  private List<JarLevel> levels() {
    for (Trial trial : trials) {
      String jar = trial.recipe().glycerol().stock().jar();
      if (!jar.isEmpty()) {
        Path file = KeptJar.file(trial.file().resolveSibling("").normalize(), jar);
        jars.putIfAbsent(real(file), file);
      }
    }
    Map<Path, List<Trial>> byFolder = new HashMap<>();
    List<JarLevel> levels = new ArrayList<>();
    for (Path file : jars.values()) {
      Findings findings = new Findings(PlainLine.of(file));
      List<Trial> beside =
          byFolder.computeIfAbsent(file.resolveSibling(""), folder -> besides(folder, trials));
      KeptJar.read(file, findings).map(jar -> JarLevel.of(jar, beside)).ifPresent(levels::add);
      faults.addAll(findings.faults());
      notices.addAll(findings.notices());
    }
    for (JarLevel level : levels) {
      trials.forEach(trial -> level.shortFor(trial).ifPresent(notices::add));
    }
    return levels;
  }

  /**
   * A kept jar with what is left in it after the trials beside it.
   *
   * @param jarFile its file
   * @param findings takes what is wrong with it
   * @return the jar, if its file has no fault
   */
  public static Optional<JarLevel> jar(Path jarFile, Findings findings) {
    return KeptJar.read(jarFile, findings)
        .map(jar -> JarLevel.of(jar, besides(jarFile.resolveSibling(""), List.of())));
  }

  /** Every sound trial of a folder: those that were read already, and what else lies there. */
  private static List<Trial> besides(Path folder, List<Trial> read) {
    List<Trial> all = new ArrayList<>(read);
    Set<Path> known = read.stream().map(trial -> real(trial.file())).collect(Collectors.toSet());
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(file -> isNamedAsTrial(file) && Files.isRegularFile(file))
          .filter(file -> !known.contains(real(file)))
          .forEach(file -> fresh(file).trial().ifPresent(all::add));
    } catch (IOException e) {
      // Those that were read are counted; the folder was reported above.
    }
    all.sort(ORDER);
    return all;
  }

  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file.toAbsolutePath().normalize();
    }
  }

  private void collect(Path folder, int depth, List<Path> found) {
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path one : inside.toList()) {
        if (Files.isDirectory(one, LinkOption.NOFOLLOW_LINKS)) {
          if (isNamedAsTrial(one)) {
            String what =
                "a folder named as a trial file; it is searched for trials like any other folder";
            notices.add(Notice.of(one, what));
          }
          if (depth > 1 && !isHidden(one)) {
            collect(one, depth - 1, found);
          }
        } else if (isNamedAsTrial(one) && Files.exists(one)) {
          found.add(one);
        } else if (isNamedAsTrial(one) && Files.isSymbolicLink(one)) {
          String mend = "plug in the disk it leads to, or delete the link";
          fault(one, "a link that leads nowhere", "", mend);
        } else if (isNamedAsTrial(one)) {
          notOpened(one);
        }
      }
    } catch (IOException | UncheckedIOException e) {
      notOpened(folder);
    }
  }

  private void notOpened(Path file) {
    fault(file, "the system could not open this", "", "check its permissions");
  }

  private void fault(Path file, String given, String allowed, String mend) {
    faults.add(Fault.of(PlainLine.of(file), "", given, allowed, mend));
  }

  /**
   * Returns whether a file is one of those that the program keeps beside trials.
   *
   * @param file a file
   * @return true for what it learned and for kept jars
   */
  public static boolean isOwn(Path file) {
    return String.valueOf(file.getFileName()).equalsIgnoreCase(WORKSHOP_FILE)
        || KeptJar.isJar(file);
  }

  /** Returns whether a file is named as a trial's, whether it exists or not. */
  public static boolean isNamedAsTrial(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return name.endsWith(".json") && !isOwn(file) && !isHidden(file);
  }

  private static boolean isHidden(Path path) {
    return String.valueOf(path.getFileName()).startsWith(".");
  }
}
