package starchfilm.files.notebook;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Notice;

/**
 * Reads trial files into a notebook.
 *
 * <p>A folder stands for every {@code *.json} file in it and in the folders below, hidden ones and
 * {@link #WORKSHOP_FILE} apart; links to folders are not followed. A file named twice is read once.
 * The order of the result does not depend on the file system. A file with a fault gives no trial,
 * the others go through.
 */
public final class NotebookReader {
  /** The file beside the trials in which the program keeps what it learned from them. */
  public static final String WORKSHOP_FILE = "workshop.json";

  private static final int MAX_DEPTH = 8;

  private static final Comparator<Trial> ORDER =
      Comparator.comparing((Trial t) -> t.pouredAt().isEmpty())
          .thenComparing(t -> t.pouredAt().orElse(java.time.LocalDateTime.MIN))
          .thenComparing(Trial::name)
          .thenComparing(t -> shown(t.file()));

  private NotebookReader() {}

  /**
   * Reads files and folders.
   *
   * @param filesOrFolders files or folders; whatever is wrong with them is in the result
   * @return the trials and the faults
   */
  public static Notebook read(List<Path> filesOrFolders) {
    List<Fault> faults = new ArrayList<>();
    List<Notice> notices = new ArrayList<>();
    List<Trial> trials = new ArrayList<>();
    TrialReader reader = new TrialReader();
    for (Path file : files(filesOrFolders, faults, notices)) {
      Findings findings = new Findings(shown(file));
      reader.read(file, findings).ifPresent(trials::add);
      findings.faults().stream()
          .sorted(
              Comparator.comparingInt((Fault f) -> f.line().orElse(0))
                  .thenComparingInt(f -> f.column().orElse(0)))
          .forEach(faults::add);
      notices.addAll(findings.notices());
    }
    trials.sort(ORDER);
    return new Notebook(trials, faults, notices);
  }

  /**
   * Reads one trial from text that stands in no file, or not yet.
   *
   * @param place where it would stand: its faults name it, and what it refers to is looked for
   *     beside it
   * @param text the text of a trial file
   * @return the trial, or its faults
   */
  public static Notebook readText(Path place, String text) {
    Findings findings = new Findings(shown(place));
    List<Trial> trials = new TrialReader().read(text, place, findings).stream().toList();
    return new Notebook(trials, findings.faults(), findings.notices());
  }

  private static List<Path> files(
      List<Path> filesOrFolders, List<Fault> faults, List<Notice> notices) {
    Map<Path, Path> byRealPath = new LinkedHashMap<>();
    for (Path named : filesOrFolders) {
      if (Files.isDirectory(named)) {
        int before = faults.size();
        List<Path> found = trialFiles(named, faults);
        if (found.isEmpty() && faults.size() == before) {
          faults.add(
              wholeFile(
                  named,
                  "a folder without trial files",
                  "at least one file *.json",
                  "name the folder that holds your trials"));
        }
        found.forEach(file -> byRealPath.putIfAbsent(real(file), file));
      } else if (isWorkshop(named) && Files.exists(named)) {
        notices.add(
            new Notice(
                shown(named), OptionalInt.empty(), "", "what learn keeps, no trial; passed over"));
      } else {
        byRealPath.putIfAbsent(real(named), named);
      }
    }
    return List.copyOf(byRealPath.values());
  }

  private static Fault wholeFile(Path file, String given, String allowed, String mend) {
    return new Fault(
        shown(file), OptionalInt.empty(), OptionalInt.empty(), "", given, allowed, mend);
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
    try {
      Files.walkFileTree(
          folder,
          Set.of(),
          MAX_DEPTH,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
              return dir.equals(folder) || !isHidden(dir)
                  ? FileVisitResult.CONTINUE
                  : FileVisitResult.SKIP_SUBTREE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
              if (isTrialFile(file)) {
                files.add(file);
              } else if (attributes.isSymbolicLink()
                  && isNamedAsTrial(file)
                  && !Files.exists(file)) {
                faults.add(
                    wholeFile(
                        file,
                        "a link that leads nowhere",
                        "",
                        "plug in the disk it leads to, or delete the link"));
              }
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
              faults.add(
                  wholeFile(
                      file,
                      "the system could not open this",
                      "",
                      "give yourself the right to read it"));
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      faults.add(
          wholeFile(
              folder,
              "the system could not read this folder",
              "",
              "give yourself the right to read it"));
    }
    files.sort(Comparator.comparing(NotebookReader::shown));
    return files;
  }

  /**
   * Whether a file is the one in which the program keeps what it learned.
   *
   * @param file a file
   * @return true where it has that name, in capitals or not
   */
  public static boolean isWorkshop(Path file) {
    return String.valueOf(file.getFileName()).equalsIgnoreCase(WORKSHOP_FILE);
  }

  private static boolean isTrialFile(Path file) {
    return isNamedAsTrial(file) && Files.isRegularFile(file);
  }

  private static boolean isNamedAsTrial(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return name.endsWith(".json") && !isWorkshop(file) && !isHidden(file);
  }

  private static boolean isHidden(Path path) {
    return String.valueOf(path.getFileName()).startsWith(".");
  }

  /** A path as a reader sees it, the same on every system. */
  private static String shown(Path path) {
    return path.toString().replace('\\', '/');
  }
}
