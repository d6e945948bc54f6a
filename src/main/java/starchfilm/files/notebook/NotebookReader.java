package starchfilm.files.notebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
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

  /** What a folder without trial files holds. */
  public static final Notebook NOTHING =
      new Notebook(List.of(), List.of(), List.of(), List.of(), List.of());

  private NotebookReader() {}

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
   * What was read of a file.
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
   * @param reader reads a file, such as one that keeps what it read
   * @return the trials and the faults
   */
  public static Notebook read(List<Path> filesOrFolders, Function<Path, TrialReading> reader) {
    List<Fault> faults = new ArrayList<>();
    List<Notice> notices = new ArrayList<>();
    List<Trial> trials = new ArrayList<>();
    List<Trial> putAway = new ArrayList<>();
    for (Path file : files(filesOrFolders, faults, notices)) {
      TrialReading reading = reader.apply(file);
      Findings findings = reading.findings();
      Optional<Trial> trial = reading.trial();
      if (findings.isPutAway()) {
        trial.ifPresent(putAway::add);
        if (!filesOrFolders.contains(file)) {
          continue;
        }
      }
      trial.ifPresent(trials::add);
      if (findings.isPutAway()) {
        notices.add(
            Notice.of(
                file,
                "put away: lists, comparisons and learning leave it out until it is fetched back"));
      }
      findings.faults().stream()
          .sorted(
              Comparator.comparingInt((Fault f) -> f.place().line())
                  .thenComparingInt(f -> f.place().column()))
          .forEach(faults::add);
      notices.addAll(findings.notices());
    }
    trials.sort(ORDER);
    putAway.sort(ORDER);
    return new Notebook(
        trials, putAway, jars(filesOrFolders, trials, faults, notices), faults, notices);
  }

  /** The jars that the trials name, and those of the folders that were named, with their levels. */
  private static List<JarLevel> jars(
      List<Path> filesOrFolders, List<Trial> trials, List<Fault> faults, List<Notice> notices) {
    Map<Path, Path> byRealPath = new LinkedHashMap<>();
    Consumer<Path> add = file -> byRealPath.putIfAbsent(real(file), file);
    for (Path named : filesOrFolders) {
      if (Files.isDirectory(named)) {
        KeptJar.in(named).forEach(add);
      } else if (KeptJar.isJar(named) && Files.isRegularFile(named)) {
        add.accept(named);
      }
    }
    trials.stream()
        .filter(trial -> !trial.recipe().glycerol().stock().jar().isEmpty())
        .map(trial -> KeptJar.file(folder(trial), trial.recipe().glycerol().stock().jar()))
        .forEach(add);
    Map<Path, List<Trial>> byFolder = new LinkedHashMap<>();
    List<JarLevel> levels = new ArrayList<>();
    for (Path file : byRealPath.values()) {
      Findings findings = new Findings(PlainLine.of(file));
      KeptJar.read(file, findings)
          .map(
              jar ->
                  JarLevel.of(
                      jar,
                      byFolder.computeIfAbsent(
                          file.resolveSibling(""), folder -> besides(folder, trials))))
          .ifPresent(levels::add);
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

  private static Path folder(Trial trial) {
    return trial.file().resolveSibling("").normalize();
  }

  /** Every sound trial of a folder: those that were read already, and what else lies there. */
  private static List<Trial> besides(Path folder, List<Trial> read) {
    List<Trial> all = new ArrayList<>(read);
    Set<Path> known = read.stream().map(trial -> real(trial.file())).collect(Collectors.toSet());
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(NotebookReader::isTrialFile)
          .filter(file -> !known.contains(real(file)))
          .forEach(file -> new TrialReader().read(file, new Findings("")).ifPresent(all::add));
    } catch (IOException e) {
      // Those that were read are counted; the folder was reported above.
    }
    all.sort(ORDER);
    return all;
  }

  private static List<Path> files(
      List<Path> filesOrFolders, List<Fault> faults, List<Notice> notices) {
    Map<Path, Path> byRealPath = new LinkedHashMap<>();
    for (Path named : filesOrFolders) {
      if (Files.isDirectory(named)) {
        int before = faults.size();
        List<Path> found = trialFiles(named, faults);
        if (found.isEmpty() && KeptJar.in(named).isEmpty() && faults.size() == before) {
          faults.add(
              wholeFile(
                  named,
                  "a folder without trial files",
                  "at least one file *.json",
                  "name the folder that holds your trials"));
        }
        found.forEach(file -> byRealPath.putIfAbsent(real(file), file));
      } else if (isOwn(named) && Files.exists(named)) {
        notices.add(
            Notice.of(
                named,
                KeptJar.isJar(named)
                    ? "a jar kept by assay, not a trial; skipped"
                    : "what learn keeps, not a trial; skipped"));
      } else {
        byRealPath.putIfAbsent(real(named), named);
      }
    }
    return List.copyOf(byRealPath.values());
  }

  private static Fault wholeFile(Path file, String given, String allowed, String mend) {
    return Fault.of(PlainLine.of(file), "", given, allowed, mend);
  }

  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file.toAbsolutePath().normalize();
    }
  }

  private static List<Path> trialFiles(Path folder, List<Fault> faults) {
    List<Path> files = new ArrayList<>();
    collect(folder, MAX_DEPTH, files, faults);
    files.sort(Comparator.comparing(PlainLine::of));
    return files;
  }

  private static void collect(Path folder, int depth, List<Path> files, List<Fault> faults) {
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path one : inside.toList()) {
        if (Files.isDirectory(one, LinkOption.NOFOLLOW_LINKS)) {
          if (depth > 1 && !isHidden(one)) {
            collect(one, depth - 1, files, faults);
          }
        } else if (isTrialFile(one)) {
          files.add(one);
        } else if (isNamedAsTrial(one) && !Files.exists(one)) {
          faults.add(
              Files.isSymbolicLink(one)
                  ? wholeFile(
                      one,
                      "a link that leads nowhere",
                      "",
                      "plug in the disk it leads to, or delete the link")
                  : notOpened(one));
        }
      }
    } catch (IOException | UncheckedIOException e) {
      faults.add(notOpened(folder));
    }
  }

  private static Fault notOpened(Path file) {
    return wholeFile(file, "the system could not open this", "", "check its permissions");
  }

  /**
   * Whether a file is one of those that the program keeps beside trials.
   *
   * @param file a file
   * @return true for what it learned and for kept jars
   */
  public static boolean isOwn(Path file) {
    return String.valueOf(file.getFileName()).equalsIgnoreCase(WORKSHOP_FILE)
        || KeptJar.isJar(file);
  }

  private static boolean isTrialFile(Path file) {
    return isNamedAsTrial(file) && Files.isRegularFile(file);
  }

  private static boolean isNamedAsTrial(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return name.endsWith(".json") && !isOwn(file) && !isHidden(file);
  }

  private static boolean isHidden(Path path) {
    return String.valueOf(path.getFileName()).startsWith(".");
  }
}
