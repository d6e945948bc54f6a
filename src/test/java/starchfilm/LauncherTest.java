package starchfilm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher of a release, with a Java that only writes down how it was called. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
  private static final String JAVA =
      """
      #!/bin/sh
      for word; do
        case $word in
          -XX:ArchiveClassesAtExit=*) echo classes >"${word#*=}"; echo train >>"$CALLS"; exit $TRAINED ;;
          -XX:DumpLoadedClassList=*) echo list >"${word#*=}"; echo list >>"$CALLS"; exit $TRAINED ;;
          -XX:SharedClassListFile=*) grep -q list "${word#*=}" && packing=yes ;;
          -XX:SharedArchiveFile=*)
            if [ "${packing:-}" ]; then echo >"${word#*=}"; echo pack >>"$CALLS"; [ $PACKED = 0 ] || kill -ABRT $$; exit; fi
            echo archive >>"$CALLS" ;;
        esac
      done
      while [ "$1" != -jar ]; do shift; done
      shift
      for word; do echo "<$word>" >>"$CALLS"; done
      exit 3
      """;

  @TempDir private Path folder;
  private Path home;
  private Path calls;
  private String trained = "0";
  private String packed = "0";

  @BeforeEach
  void unpack() throws IOException {
    home = folder.resolve("a place with spaces");
    Files.createDirectories(home.resolve("lib"));
    String launcher = Files.readString(Path.of("src/release/starchfilm"));
    write(home.resolve("starchfilm"), launcher.replace("${project.version}", "9.9"));
    calls = folder.resolve("calls");
    javaAt(folder.resolve("jdk"));
  }

  @Test
  void handsEveryWordOnAndEndsAsTheProgramDoes() throws Exception {
    assertThat(start("dry", "my trial.json", "--rh", "65 %", "", "*", "$HOME", "\"")).isEqualTo(3);

    assertThat(called())
        .endsWith(
            "<" + home.toRealPath() + "/lib/starchfilm.jar>",
            "<dry>",
            "<my trial.json>",
            "<--rh>",
            "<65 %>",
            "<>",
            "<*>",
            "<$HOME>",
            "<\">");
  }

  @Test
  void archivesTheClassesOnce() throws Exception {
    start("--help");
    start("--help");

    assertThat(called().stream().filter(line -> !line.startsWith("<")))
        .containsExactly("train", "archive", "archive");
  }

  /** In a place whose path has no spaces it goes by a list of the classes. */
  @Test
  void archivesThemAgainWhereItWasMoved() throws Exception {
    start("--help");
    Path elsewhere = folder.resolve("elsewhere");
    Files.move(home, elsewhere);
    home = elsewhere;
    start("--help");

    assertThat(called().stream().filter(line -> !line.startsWith("<")))
        .containsExactly("train", "archive", "list", "pack", "archive");
    try (Stream<Path> kept = Files.list(home.resolve("lib"))) {
      assertThat(kept).hasSize(2); // the archive and its place
    }
  }

  @Test
  void startsWithoutAnArchiveWhereNoneCanBeMade() throws Exception {
    trained = "134";

    assertThat(start("--help")).isEqualTo(3);
    assertThat(called()).doesNotContain("archive").endsWith("<--help>");
    assertThat(home.resolve("lib")).isEmptyDirectory();
  }

  /**
   * The example may have been thrown away; each start then tried in vain and took four times as
   * long.
   */
  @Test
  void archivesTheClassesWithoutTheExample() throws Exception {
    trained = "2";

    assertThat(start("--help")).isEqualTo(3);
    assertThat(called()).startsWith("train", "archive").endsWith("<--help>");
  }

  /** It did with a Java 17: the user saw "Aborted", and a report of it lay in the folder. */
  @Test
  void archivesThemInOneGoWhereJavaCrashesOnTheList() throws Exception {
    packed = "crash";
    Path elsewhere = folder.resolve("elsewhere");
    Files.move(home, elsewhere);
    home = elsewhere;

    assertThat(start("--help")).isEqualTo(3);
    assertThat(called()).startsWith("list", "pack", "train", "archive").endsWith("<--help>");
  }

  @Test
  void sweepsAwayWhatABrokenOffFirstStartHasLeft() throws Exception {
    Path lib = home.resolve("lib");
    Files.writeString(lib.resolve("java-17.jsa.123"), "half");
    Files.writeString(lib.resolve("java-17.jsa.123.list"), "list");
    start("--help");

    try (Stream<Path> kept = Files.list(lib)) {
      assertThat(kept.map(path -> path.getFileName().toString()))
          .containsExactlyInAnyOrder("java-17.jsa", "java-17.txt");
    }
  }

  @Test
  void startsWithoutAnArchiveWhereJavaDoesNotTellItsVersion() throws Exception {
    Files.delete(folder.resolve("jdk/release"));

    assertThat(start("--help")).isEqualTo(3);
    assertThat(called()).doesNotContain("train", "list", "archive").endsWith("<--help>");
  }

  @Test
  void followsLinksAndPrefersItsOwnRuntime() throws Exception {
    javaAt(home.resolve("runtime"));
    Files.delete(folder.resolve("jdk/bin/java"));
    Path link = Files.createSymbolicLink(folder.resolve("film"), home.resolve("starchfilm"));

    assertThat(run(link, "--version")).isEqualTo(3);
    assertThat(called()).endsWith("<--version>");
  }

  /** No Windows is at hand where it is built, so the two are at least held together. */
  @Test
  void bothLaunchersStartJavaTheSameWay() throws IOException {
    String here = Files.readString(Path.of("src/release/starchfilm"));
    String windows = Files.readString(Path.of("src/release/starchfilm.cmd"));

    Set<String> flags = all("-X[A-Za-z:]*[+=]?[A-Za-z0-9=:]*", here);
    flags.removeAll(Set.of("-Xshare:dump", "-XX:DumpLoadedClassList=", "-XX:SharedClassListFile="));
    assertThat(all("-X[A-Za-z:]*[+=]?[A-Za-z0-9=:]*", windows))
        .isEqualTo(flags)
        .contains("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:ArchiveClassesAtExit=");
    assertThat(all("starchfilm: no Java .*? is\\.", windows))
        .isEqualTo(all("starchfilm: no Java .*? is\\.", here))
        .hasSize(1);
  }

  @Test
  void everyLabelOfTheWindowsLauncherIsThere() throws IOException {
    String windows = Files.readString(Path.of("src/release/starchfilm.cmd"));

    Set<String> called = all("(?<=goto |call :)\\w+", windows);
    assertThat(all("(?m)(?<=^:)\\w+", windows)).containsAll(called);
    assertThat(called).isNotEmpty();
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(windows)).isTrue();
  }

  private static Set<String> all(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private void javaAt(Path jdk) throws IOException {
    Files.createDirectories(jdk.resolve("bin"));
    write(jdk.resolve("bin/java"), JAVA);
    Files.writeString(
        jdk.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"17\"\nOS_NAME=\"Linux\"\n");
  }

  private static void write(Path script, String text) throws IOException {
    Files.writeString(script, text);
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private int start(String... words) throws Exception {
    return run(home.resolve("starchfilm"), words);
  }

  private int run(Path launcher, String... words) throws Exception {
    List<String> line = new ArrayList<>(List.of(launcher.toString()));
    line.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
    builder.environment().put("CALLS", calls.toString());
    builder.environment().put("TRAINED", trained);
    builder.environment().put("PACKED", packed);
    builder.redirectErrorStream(true);
    Process process = builder.start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(said).isEmpty();
    return process.exitValue();
  }

  private List<String> called() throws IOException {
    return Files.readAllLines(calls);
  }
}
