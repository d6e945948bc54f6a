package starchfilm.files.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;

/**
 * A jar of glycerol that trials take from by its name. It is a small file beside them: {@code
 * first-batch.jar.json} is the jar {@code first-batch}.
 *
 * @param file its file
 * @param massKg what it held when it was weighed, water and salt included (kg)
 * @param stock what is in it
 * @param weighedAt when it was weighed, by the clock on the wall, if noted
 */
public record KeptJar(
    Path file, Estimate massKg, GlycerolStock stock, Optional<LocalDateTime> weighedAt) {
  private static final String ENDING = ".jar.json";
  private static final String NAME = "[\\p{L}\\p{N}][\\p{L}\\p{N} _-]{0,59}";
  private static final long MAX_BYTES = 100_000;

  /**
   * The name that trials know it by.
   *
   * @return such as {@code first-batch}
   */
  public String name() {
    return stock.jar();
  }

  /**
   * Returns whether a file is named as a jar's.
   *
   * @param file a file
   * @return true for such as {@code first-batch.jar.json}
   */
  public static boolean isJar(Path file) {
    return fileName(file).toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  /**
   * Returns whether a jar may have a name.
   *
   * @param name the name
   * @return true where a file can be called so everywhere
   */
  public static boolean isName(String name) {
    return name.matches(NAME);
  }

  /**
   * The file of a jar.
   *
   * @param folder the folder of its trials
   * @param name its name
   * @return the file, whether it exists or not
   */
  public static Path file(Path folder, String name) {
    return folder.resolve(name + ENDING);
  }

  /**
   * The jars of a folder.
   *
   * @param folder the folder
   * @return their files by name, in order; none where the folder cannot be read
   */
  public static List<Path> in(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(KeptJar::isJar).sorted().toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * The name of a jar's file.
   *
   * @param file a file that {@link #isJar}
   * @return what trials write for it
   */
  public static String name(Path file) {
    String name = fileName(file);
    return name.substring(0, name.length() - ENDING.length());
  }

  /**
   * What may be named of the jars of a folder.
   *
   * @param folder the folder
   * @return words for a sentence
   */
  public static String allowed(Path folder) {
    String names = in(folder).stream().map(KeptJar::name).collect(Collectors.joining(", "));
    return "a jar kept in this folder" + (names.isEmpty() ? ", which has none" : ": " + names);
  }

  /**
   * Reads a jar's file.
   *
   * @param file the file
   * @param findings takes what turns up
   * @return the jar, if the file has no fault
   */
  public static Optional<KeptJar> read(Path file, Findings findings) {
    try {
      String text = FileText.utf8(FileText.bytes(file, MAX_BYTES));
      Located.ObjectValue jar = LocatedReader.object(text, "keep the jar again with assay --keep");
      KeptJar kept = read(file, new ObjectReader(jar, TrialField.JAR, findings), findings);
      UnknownFields.tell(jar, TrialField.JAR, findings);
      return Optional.of(kept).filter(sound -> findings.faults().isEmpty());
    } catch (UnreadableFileException e) {
      findings.fault(e);
      return Optional.empty();
    }
  }

  private static KeptJar read(Path file, ObjectReader jar, Findings findings) {
    for (String needed : List.of("mass_g", "purity_pct")) {
      if (jar.amount(needed).isEmpty() && findings.faults().isEmpty()) {
        jar.fault(
            needed,
            "a jar without " + needed,
            "a number or a range",
            "write it, or keep the jar again with assay --keep");
      }
    }
    Estimate massKg = jar.amount("mass_g").orElse(Estimate.exact(0));
    Optional<LocalDateTime> weighedAt = TimesReader.clock(jar, "weighed_at");
    GlycerolStock stock = GlycerolReader.stock(jar).keptAs(name(file));
    return new KeptJar(file, massKg, stock, weighedAt);
  }

  private static String fileName(Path file) {
    return String.valueOf(file.getFileName());
  }
}
