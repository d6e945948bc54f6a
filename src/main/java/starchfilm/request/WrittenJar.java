package starchfilm.request;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.findings.Findings;
import starchfilm.files.notebook.JarLevel;
import starchfilm.files.notebook.KeptJar;
import starchfilm.files.notebook.NotebookReader;

/** A jar that was kept under a name, as written. */
final class WrittenJar {

  private WrittenJar() {}

  /**
   * The jar with what is left.
   *
   * @param folder where it is looked for
   * @param tells what the jar says by itself, and may not be written beside it
   */
  static Optional<JarLevel> read(EntryReader in, Path folder, String... tells) {
    if (in.has("jar.kept")) {
      for (String told : tells) {
        in.refuseBeside(told, "jar.kept", ", which says it; leave one out");
      }
    }
    return in.one("jar.kept", typed -> level(typed.strip(), folder));
  }

  private static JarLevel level(String typed, Path folder) {
    Path file;
    try {
      Path path = folder.resolve(typed);
      file = KeptJar.file(path.resolveSibling(""), String.valueOf(path.getFileName()));
    } catch (InvalidPathException impossible) {
      throw new MistypedException(typed, "the name of a jar", "write the name it was kept under");
    }
    if (!Files.isRegularFile(file)) {
      throw new MistypedException(
          typed, KeptJar.allowed(folder), "keep it with assay --keep, or write folder/name");
    }
    Findings findings = new Findings(file.getFileName().toString());
    return NotebookReader.jar(file, findings)
        .orElseThrow(
            () -> new IllegalArgumentException("--jar: " + findings.faults().get(0).sentence()));
  }
}
