package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenCommandTest {
  @TempDir private Path folder;

  @Test
  void saysThatAPortIsTaken() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Terminal terminal = new Terminal(folder);

      int exit = terminal.run("open", "--no-open", "--port", String.valueOf(taken.getLocalPort()));

      assertThat(exit).isEqualTo(1);
      assertThat(terminal.err())
          .isEqualToNormalizingNewlines(
              "starchfilm: --port: "
                  + taken.getLocalPort()
                  + " is used by another program, or not allowed; leave --port out to get"
                  + " a free one.\n");
    }
  }

  @Test
  void servesUntilAPageStopsIt() throws Exception {
    Terminal terminal = new Terminal(folder);
    CompletableFuture<Integer> exit =
        CompletableFuture.supplyAsync(() -> terminal.run("open", "--no-open"));
    Pattern address = Pattern.compile("http://\\S+/");
    while (!terminal.out().contains("Ctrl+C") && !exit.isDone()) {
      Thread.sleep(20);
    }
    Matcher said = address.matcher(terminal.out());
    assertThat(said.find()).isTrue();
    URI page = URI.create(said.group());

    // The printed key is exchanged for a cookie, and the token is that visitor's own.
    Matcher key = Pattern.compile("\\?key=(\\S+)").matcher(terminal.out());
    assertThat(key.find()).isTrue();
    HttpResponse<String> let =
        asked(
            HttpRequest.newBuilder(page.resolve("enter"))
                .POST(HttpRequest.BodyPublishers.ofString("key=" + key.group(1))));
    String cookie = let.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
    HttpResponse<String> notebook =
        asked(HttpRequest.newBuilder(page.resolve("trials")).header("Cookie", cookie));
    String token = notebook.body().replaceFirst("(?s).*?name=\"token\" value=\"([^\"]*).*", "$1");
    asked(
        HttpRequest.newBuilder(page.resolve("stop"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Cookie", cookie)
            .POST(HttpRequest.BodyPublishers.ofString("token=" + token)));

    assertThat(exit.get(20, TimeUnit.SECONDS)).isZero();
    assertThat(terminal.out())
        .contains("Only this machine can reach it, and only with a key.")
        .contains("Stopped; everything is saved.");
  }

  private static HttpResponse<String> asked(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  @Test
  void refusesAPortThatIsNone() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("open", "--no-open", "--port", "70000")).isEqualTo(2);
    assertThat(terminal.err()).contains("70000 given, allowed 1 to 65535");
  }

  @Test
  void answersToItsOldNameInThisVersion() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("serve", "--no-open", "no-such-folder")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("this command is called open now")
        .contains("no-such-folder: there is no such folder");
    terminal.run("--help");
    assertThat(terminal.out()).contains("  open ").doesNotContain("  serve ");
  }

  @Test
  void refusesAFolderThatIsNotThere() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("open", "--no-open", "no-such-folder")).isEqualTo(2);
    assertThat(terminal.err()).contains("no-such-folder: there is no such folder");
  }
}
