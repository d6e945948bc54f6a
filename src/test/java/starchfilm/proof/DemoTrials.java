package starchfilm.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The trials that the program is shipped with; all invented. */
public final class DemoTrials {
  private static final Path DEMO = Path.of("formulations");

  private DemoTrials() {}

  /**
   * Their files.
   *
   * @return every trial file in order; what was learnt from them is no trial
   */
  public static List<Path> files() {
    try (Stream<Path> files = Files.walk(DEMO)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.endsWith("workshop.json"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
