package starchfilm.files.saving;

import static starchfilm.numerics.units.Units.G_PER_KG;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.notebook.KeptJar;
import starchfilm.files.saving.SafeFile.WrittenFile;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;

/** Writes the small file by which trials take from a jar. */
public final class JarFile {
  private JarFile() {}

  /**
   * Keeps a jar; one of that name is replaced, and its file kept as {@code .before}.
   *
   * @param folder the folder of its trials
   * @param name the name they will know it by
   * @param massKg what it holds (kg)
   * @param stock what is in it
   * @param now the time by the clock on the wall
   * @return the file with what its owner should know
   * @throws NotWrittenException where it cannot be kept
   */
  public static WrittenFile keep(
      Path folder, String name, Estimate massKg, GlycerolStock stock, LocalDateTime now)
      throws NotWrittenException {
    Path file = KeptJar.file(folder, KeptJar.isName(name) ? name : "");
    if (!KeptJar.isName(name)) {
      throw NotWrittenException.because(
          folder,
          "\"" + name + "\" as the name of a jar",
          "write up to 60 letters, digits, blanks, - and _, beginning with a letter or digit");
    }
    ObjectValue jar =
        Located.object()
            .with("what", "jar of glycerol")
            .with("mass_g", CastingFields.range(massKg.times(G_PER_KG)));
    ObjectValue dated =
        CastingFields.withContent(jar, stock)
            .with("weighed_at", now.truncatedTo(ChronoUnit.MINUTES).toString());
    byte[] text = LocatedWriter.lines(dated).getBytes(StandardCharsets.UTF_8);
    return SafeFile.rewrite(file, before -> text);
  }
}
