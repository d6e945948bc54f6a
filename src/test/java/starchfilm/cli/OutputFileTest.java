package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is the user's own, or no file at all, is never written over by a result. */
@Timeout(60)
class OutputFileTest {
  private static final String OWN = "<!DOCTYPE html>\n<html><body>MY OWN HOMEPAGE</body></html>\n";

  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() throws IOException {
    terminal = new Terminal(folder);
    Files.copy(Path.of("formulations/starter-first-film.json"), folder.resolve("t.json"));
  }

  private int compare(String out) {
    return terminal.run("compare", "t.json", "--out", out);
  }

  @Test
  void aPageOfTheUsersOwnStays() throws IOException {
    Path own = Files.writeString(folder.resolve("index.html"), OWN);
    assertThat(compare("index.html")).isEqualTo(2);
    assertThat(terminal.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: --out index.html is there and is no comparison page of this program; it"
                + " was left alone, choose another name.\n");
    assertThat(own).hasContent(OWN);
  }

  @Test
  void weighOutSheetsDoNotTakeAComparisonsPlace() throws IOException {
    assertThat(compare("page.html")).isZero();
    String page = Files.readString(folder.resolve("page.html"));
    assertThat(terminal.plan("--sheet", "page.html")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("is there and is no page of weigh-out sheets of this program");
    assertThat(folder.resolve("page.html")).hasContent(page);
  }

  @Test
  void thePageBeforeIsKept() throws IOException {
    assertThat(compare("page.html")).isZero();
    String first = Files.readString(folder.resolve("page.html")) + "<!-- my note -->";
    Files.writeString(folder.resolve("page.html"), first);
    assertThat(compare("page.html")).isZero();
    assertThat(folder.resolve("page.html.before")).hasContent(first);
  }

  @Test
  void aLinkIsKeptAndWhatItLeadsToIsWritten() throws IOException {
    assertThat(compare("real.html")).isZero();
    Files.writeString(folder.resolve("real.html"), "");
    Path link = Files.createSymbolicLink(folder.resolve("ln.html"), Path.of("real.html"));
    assertThat(compare("ln.html")).isZero();
    assertThat(link).isSymbolicLink();
    assertThat(folder.resolve("real.html")).isNotEmptyFile();
  }

  @Test
  void aLinkThatLeadsNowhereIsRefused() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("ln.html"), Path.of("gone.html"));
    assertThat(compare("ln.html")).isEqualTo(2);
    assertThat(terminal.err()).contains("--out ln.html is a link that leads nowhere");
    assertThat(link).isSymbolicLink();
  }

  @Test
  void aPlantedLinkIsNotFollowed() throws IOException {
    Path precious = Files.writeString(folder.resolve("prec.txt"), "precious");
    for (String name : new String[] {".p.html.part", ".p.html.new", "p.html.before"}) {
      Files.createSymbolicLink(folder.resolve(name), precious);
    }
    assertThat(compare("p.html")).isZero();
    assertThat(terminal.run("compare", "t.json", "t.json", "--out", "p.html")).isZero();
    assertThat(precious).hasContent("precious");
  }

  @Test
  void aPipeIsRefusedAtOnce() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "needs mkfifo");
    Path pipe = folder.resolve("p.html");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    assertThat(compare("p.html")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("--out p.html is a device or a pipe, no file; write - for standard output");
  }

  @Test
  void aDeviceIsRefused() {
    assumeTrue(Files.exists(Path.of("/dev/null")), "needs /dev/null");
    assertThat(compare("/dev/null")).isEqualTo(2);
    assertThat(compare("/dev/stdout")).isEqualTo(2);
    assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
  }

  @Test
  void theFileOfWhatWasLearntIsNoPlaceForAResult() {
    assertThat(terminal.run("dry", "t.json", "--json", "Workshop.json")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("is the name of what learn or assay --keep keeps; choose another name");
    assertThat(folder.resolve("Workshop.json")).doesNotExist();
  }
}
