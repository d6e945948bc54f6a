package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.web.Served.Content;

/** What strangers try: to learn the token, to fill the memory, to hold every thread. */
class SiegeTest {
  private static final int MORE_THAN_THREADS = 40;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "GET,evil.example:1,Accept: */*,421",
    "GET,'',Sec-Fetch-Site: cross-site,403",
    "POST,'',Origin: http://evil.example,403",
    "POST,'',Origin: null,403",
    "POST,'',Accept: */*,403"
  })
  void aRefusalTellsOneSentenceAndNothingElse(
      String method, String host, String header, int status, @Served RunningSite site)
      throws IOException {
    String answer =
        site.raw(
            method
                + " /trial/note HTTP/1.1\r\nHost: "
                + (host.isEmpty() ? "127.0.0.1:" + site.port() : host)
                + "\r\n"
                + header
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 0\r\n"
                + "Connection: close\r\n\r\n");

    assertThat(answer).startsWith("HTTP/1.1 " + status);
    assertThat(answer)
        .doesNotContain("<", "token", site.folder().toString(), "Stop starchfilm")
        .contains("text/plain");
  }

  @Test
  void aStrangerOnTheNetworkLearnsNothing() throws IOException {
    try (RunningSite site = RunningSite.shared(folder)) {
      assumeThat(site.addressesForOthers()).as("networks of this machine").isNotEmpty();
      HttpResponse<String> answer =
          site.send(HttpRequest.newBuilder(URI.create(site.addressesForOthers().get(0))));

      assertThat(answer.statusCode()).isEqualTo(401);
      assertThat(answer.body()).doesNotContain("<", "token", folder.toString());
    }
  }

  @Test
  void takesAFormOfAHiddenOriginOnlyWhereTheBrowserSaysItIsOurs(
      @Served(Content.DRYING) RunningSite site) {
    String[] remark = {
      "token", site.token(), "file", DryingTrial.FILE, "kind", "remark", "words", "Mine."
    };
    assertThat(site.postBare("/trial/note", List.of("Origin", "null"), remark).statusCode())
        .isEqualTo(403);
    assertThat(
            site.postBare(
                    "/trial/note",
                    List.of("Origin", "null", "Sec-Fetch-Site", "same-origin"),
                    remark)
                .statusCode())
        .isEqualTo(303);
  }

  @Test
  void aTokenServesOneVisitor(@Served(Content.DRYING) RunningSite site) throws IOException {
    String mine = site.token();
    PageClient other = new PageClient(site.address());
    assertThat(other.token()).isNotEqualTo(mine);

    HttpResponse<String> answer =
        other.postBare(
            "/trial/note",
            List.of(),
            "token",
            mine,
            "file",
            DryingTrial.FILE,
            "kind",
            "remark",
            "words",
            "Not mine.");
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(Files.readString(site.folder().resolve(DryingTrial.FILE)))
        .doesNotContain("Not mine.");
  }

  @Test
  void countsFieldsWhileTheyAreRead(@Served RunningSite site) {
    String names = "a=&".repeat(1_500_000);
    List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      answers.add(
          CompletableFuture.supplyAsync(
              () ->
                  site.send(
                      HttpRequest.newBuilder(site.uri("/stop"))
                          .header("Content-Type", "application/x-www-form-urlencoded")
                          .POST(HttpRequest.BodyPublishers.ofString(names)))));
    }
    for (CompletableFuture<HttpResponse<String>> answer : answers) {
      assertThat(answer.join().statusCode()).isIn(400, 503);
    }
    assertThat(answers.get(0).join().body()).contains("more than 2000 fields");
    assertThat(site.get("/trials").statusCode()).isEqualTo(200);
  }

  @Test
  void countsPartsOfOneNameToo(@Served RunningSite site) {
    String part = "--x\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\n1\r\n";
    HttpResponse<String> answer = multipart(site, part.repeat(100_000) + "--x--\r\n");

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("more than 200 parts");
  }

  @Test
  void keepsNoFileOfAFormWithoutToken(@Served(Content.DRYING) RunningSite site) throws IOException {
    String file =
        "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.png\"\r\n\r\n"
            + "b".repeat(5_000_000)
            + "\r\n--x\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n"
            + site.token()
            + "\r\n--x--\r\n";
    HttpResponse<String> answer = multipart(site, file);

    assertThat(answer.statusCode()).as("the token comes too late").isEqualTo(403);
    assertThat(answer.body()).doesNotContain("<");
  }

  @Test
  void slowConnectionsAreCutOffAndHoldNobodyUp(@Served RunningSite site) throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < MORE_THAN_THREADS; i++) {
        Socket socket = new Socket("127.0.0.1", site.port());
        socket
            .getOutputStream()
            .write("GET / HTTP/1.1\r\nX-Slow: ".getBytes(StandardCharsets.US_ASCII));
        slow.add(socket);
      }
      CompletableFuture<HttpResponse<String>> owner =
          CompletableFuture.supplyAsync(() -> site.get("/trials"));
      int cutOff = 0;
      while (cutOff < MORE_THAN_THREADS) {
        for (Socket socket : List.copyOf(slow)) {
          if (!trickled(socket)) {
            slow.remove(socket);
            cutOff++;
          }
        }
        Thread.sleep(200);
      }
      assertThat(owner.join().statusCode()).isEqualTo(200);
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
  }

  /** Sends a byte more; false where the connection is cut off. */
  private static boolean trickled(Socket socket) {
    try {
      socket.getOutputStream().write('a');
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static HttpResponse<String> multipart(RunningSite site, String body) {
    return site.send(
        HttpRequest.newBuilder(site.uri("/trial/photo"))
            .header("Content-Type", "multipart/form-data; boundary=x")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }
}
