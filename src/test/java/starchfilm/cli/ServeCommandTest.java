package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServeCommandTest {
  @TempDir private Path folder;

  @Test
  void saysThatAPortIsTaken() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Terminal terminal = new Terminal(folder);

      int exit = terminal.run("serve", "--no-open", "--port", String.valueOf(taken.getLocalPort()));

      assertThat(exit).isEqualTo(1);
      assertThat(terminal.err())
          .isEqualToNormalizingNewlines(
              "starchfilm: --port: "
                  + taken.getLocalPort()
                  + " is taken by another program, or may not be used; leave --port out for a free"
                  + " one.\n");
    }
  }

  @Test
  void refusesAPortThatIsNone() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("serve", "--no-open", "--port", "70000")).isEqualTo(2);
    assertThat(terminal.err()).contains("70000 given, allowed 1 to 65535");
  }

  @Test
  void refusesAFolderThatIsNotThere() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("serve", "--no-open", "no-such-folder")).isEqualTo(2);
    assertThat(terminal.err()).contains("no-such-folder: there is no such folder");
  }
}
