package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.web.Served.Content;

/** What is refused, and what every answer carries. */
class SafetyTest {
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.GARDEN) RunningSite served) {
    site = served;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"example.org", "example.org:PORT", "127.0.0.1", "127.0.0.1.example.org:PORT", ""})
  void refusesANameThatIsNotOurs(String host) throws IOException {
    String answer =
        site.raw(
            "GET /trials HTTP/1.1\r\nHost: "
                + host.replace("PORT", String.valueOf(site.port()))
                + "\r\nConnection: close\r\n\r\n");

    assertThat(answer).startsWith("HTTP/1.1 421").doesNotContain("Thick tray");
  }

  @Test
  void refusesARequestWithoutHostOrWithTwo() throws IOException {
    String own = "Host: 127.0.0.1:" + site.port() + "\r\n";

    assertThat(site.raw("GET /trials HTTP/1.1\r\nConnection: close\r\n\r\n"))
        .startsWith("HTTP/1.1 421");
    assertThat(site.raw("GET /trials HTTP/1.1\r\n" + own + own + "Connection: close\r\n\r\n"))
        .startsWith("HTTP/1.1 421");
  }

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "localhost", "LOCALHOST"})
  void knowsItsOwnNames(String name) throws IOException {
    String answer =
        site.raw(
            "GET /trials HTTP/1.1\r\nHost: "
                + name
                + ":"
                + site.port()
                + "\r\nConnection: close\r\n\r\n");

    assertThat(answer).startsWith("HTTP/1.1 200");
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://example.org", "https://127.0.0.1:1", "http://localhost:1"})
  void refusesAFormFromAnotherOrigin(String origin) {
    HttpResponse<String> answer =
        site.postBare("/stop", List.of("Origin", origin), "token", site.token());

    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("Another site tried to change these trials");
  }

  @Test
  void refusesAFormWithoutOrWithAWrongToken() {
    assertThat(site.postBare("/stop", List.of()).statusCode()).isEqualTo(403);
    assertThat(site.postBare("/stop", List.of(), "token", "guess").statusCode()).isEqualTo(403);
    assertThat(site.get("/trials").statusCode()).as("still running").isEqualTo(200);
  }

  @Test
  void refusesAFormThatTheBrowserMarksAsFromElsewhere() {
    HttpResponse<String> answer =
        site.postBare(
            "/stop",
            List.of("Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate"),
            "token",
            site.token());

    assertThat(answer.statusCode()).isEqualTo(403);
  }

  @Test
  void letsAnotherSiteLinkHereButNotLoadFromHere() {
    assertThat(
            site.get("/trials", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate")
                .statusCode())
        .isEqualTo(200);
    assertThat(
            site.get("/trials", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "no-cors")
                .statusCode())
        .isEqualTo(403);
  }

  @Test
  void carriesTheSafetyHeadersOnEveryAnswer() {
    for (String path : List.of("/", "/trials", "/compare", "/compare/page", "/nowhere", "/stop")) {
      HttpResponse<String> answer = site.get(path);

      assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
          .as(path)
          .contains("default-src 'none'")
          .contains("script-src 'self'")
          .contains("frame-ancestors 'none'")
          .doesNotContain("unsafe");
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
      assertThat(answer.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
      assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
    }
  }

  @Test
  void letsOnlyTheStyleOfTheComparisonPageThrough() {
    HttpResponse<String> answer = site.getMade("/compare/file?trial=4-blend.json");

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("style-src 'sha256-")
        .doesNotContain("unsafe")
        .doesNotContain("script-src");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.json",
        "..%2Fsecret.json",
        "%2e%2e/secret.json",
        "a/../../secret.json",
        "/etc/passwd",
        "%2Fetc%2Fpasswd",
        "..%5Csecret.json",
        ".hidden.json",
        "workshop.json",
        "shed-april.csv",
        "x%00.json",
        "link.json",
        ""
      })
  void readsNothingButTrialFilesOfTheFolder(String name) throws IOException {
    Files.writeString(site.folder().resolveSibling("secret.json"), "{\"name\": \"secret\"}");
    Path notebook = site.folder();
    Files.copy(notebook.resolve("4-blend.json"), notebook.resolve(".hidden.json"));
    Files.createSymbolicLink(
        notebook.resolve("link.json"), site.folder().resolveSibling("secret.json"));

    HttpResponse<String> answer = site.get("/compare/page?trial=" + name);

    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body()).doesNotContain("secret\"").doesNotContain("root:");
  }

  @Test
  void saysSoWhenAFormIsTooLarge() {
    byte[] large = new byte[9_000_000];
    Arrays.fill(large, (byte) 'a');
    HttpResponse<String> answer =
        site.send(
            HttpRequest.newBuilder(site.uri("/stop"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofByteArray(large)));

    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.body()).contains("larger than 8 MB").contains("nothing was saved");
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/plain", "application/json", "nonsense"})
  void takesOnlyForms(String type) {
    HttpResponse<String> answer =
        site.send(
            HttpRequest.newBuilder(site.uri("/stop"))
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString("token=" + site.token())));

    assertThat(answer.statusCode()).isEqualTo(415);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a=%", "a=%zz", "a=%1"})
  void saysSoWhenAFormIsGarbled(String body) {
    HttpResponse<String> answer =
        site.send(
            HttpRequest.newBuilder(site.uri("/stop"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("could not be read");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "multipart/form-data",
        "multipart/form-data; boundary=x",
        "multipart/form-data; boundary="
      })
  void saysSoWhenAFormWithFilesBreaksOff(String type) {
    HttpResponse<String> answer =
        site.send(
            HttpRequest.newBuilder(site.uri("/stop"))
                .header("Content-Type", type)
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "--x\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\nabc")));

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("nothing was saved");
  }

  @Test
  void answersOnlyWholePathsAndTheirMethods() {
    assertThat(site.get("/trials/").statusCode()).isEqualTo(404);
    assertThat(site.get("/stop").statusCode()).isEqualTo(405);
    assertThat(site.post("/trials").statusCode()).isEqualTo(405);
    assertThat(
            site.send(
                    HttpRequest.newBuilder(site.uri("/trials"))
                        .method("DELETE", HttpRequest.BodyPublishers.noBody()))
                .statusCode())
        .isEqualTo(405);
  }

  @Test
  void listensOnlyOnThisMachine() {
    assertThat(site.addressesForOthers()).isEmpty();
    assertThat(site.address()).startsWith("http://127.0.0.1:");
  }

  @Test
  void stopsWhenAPageAsksForIt() throws InterruptedException {
    HttpResponse<String> answer = site.post("/stop");

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("Everything is saved");
    site.site().awaitStop();
  }
}
