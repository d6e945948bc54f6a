package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The comparison page is the same, byte for byte, whatever the reader's language, zone, number of
 * threads, compiler and newer Java.
 *
 * <p>{@code -Dstarchfilm.matrix=true} goes over all of {@code formulations} and many more machines,
 * among them one that computes exp, log and pow by other code and one without fused multiply-add.
 */
@Timeout(600)
class SameBytesTest {
  private static final boolean ALL = Boolean.getBoolean("starchfilm.matrix");
  private static final String THREADS = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=";
  private static final List<List<String>> FEW =
      List.of(
          List.of(
              "-Duser.language=tr",
              "-Duser.country=TR",
              "-Duser.timezone=Asia/Kathmandu",
              THREADS + 1,
              "-XX:TieredStopAtLevel=1"),
          List.of(
              "-Duser.language=ar",
              "-Duser.country=EG",
              "-Duser.timezone=Pacific/Apia",
              THREADS + 4,
              "-Dfile.encoding=ISO-8859-1"));
  private static final List<List<String>> MANY =
      List.of(
          FEW.get(0),
          FEW.get(1),
          List.of("-Duser.language=de", "-Duser.country=DE", "-Duser.timezone=Europe/Berlin"),
          List.of("-Duser.language=th", "-Duser.country=TH", "-Duser.timezone=America/St_Johns"),
          List.of("-Duser.language=fa", "-Duser.country=IR", THREADS + 16),
          List.of("-XX:+UnlockDiagnosticVMOptions", "-XX:-UseLibmIntrinsic"),
          List.of("-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC", "-Xmx96m"),
          List.of("-XX:TieredStopAtLevel=0"),
          List.of("-XX:-TieredCompilation"));

  @TempDir private Path folder;

  @Test
  void everywhere() throws Exception {
    String files = ALL ? "formulations" : "formulations/garden/4-blend.json";
    List<String> command = List.of("compare", files, "--out", "-");
    String page = Outcome.of(Path.of(""), command.toArray(String[]::new)).out();
    assertThat(page).contains("</html>");

    List<Path> javas = javas();
    for (int i = 0; i < (ALL ? javas.size() * MANY.size() : FEW.size()); i++) {
      Path java = javas.get(i % javas.size());
      List<String> machine = ALL ? MANY.get(i / javas.size()) : FEW.get(i);
      assertThat(page(java, machine, command)).as("%s %s", java, machine).isEqualTo(page);
    }
  }

  private String page(Path java, List<String> machine, List<String> command) throws Exception {
    Path said = folder.resolve("page.html");
    List<String> words = new ArrayList<>(List.of(java.toString()));
    words.addAll(machine);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), "starchfilm.cli.Main"));
    words.addAll(command);
    Process process =
        new ProcessBuilder(words)
            .redirectOutput(said.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertThat(process.waitFor()).as("%s", words).isZero();
    return Files.readString(said);
  }

  private static Path own() {
    return Path.of(System.getProperty("java.home"), "bin", "java");
  }

  /** The Java of this test, and a newer one where this machine has it. */
  private static List<Path> javas() throws IOException {
    List<Path> javas = new ArrayList<>(List.of(own()));
    Path usual = Path.of("/usr/lib/jvm");
    if (Files.isDirectory(usual)) {
      try (Stream<Path> homes = Files.list(usual)) {
        homes
            .filter(
                home -> !Files.isSymbolicLink(home) && feature(home) > Runtime.version().feature())
            .sorted()
            .map(home -> home.resolve("bin/java"))
            .filter(Files::isExecutable)
            .forEach(javas::add);
      }
    }
    return javas.subList(0, Math.min(javas.size(), 2));
  }

  /** The version a Java says it is, 0 where there is none. */
  private static int feature(Path home) {
    Properties release = new Properties();
    try (var in = Files.newBufferedReader(home.resolve("release"))) {
      release.load(in);
      String version = release.getProperty("JAVA_VERSION", "0").replace("\"", "");
      return Integer.parseInt(version.split("\\.", 2)[0]);
    } catch (IOException | NumberFormatException e) {
      return 0;
    }
  }
}
