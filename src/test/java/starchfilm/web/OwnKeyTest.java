package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another user of the same machine gets nothing without the key that the owner was shown. */
class OwnKeyTest {
  @TempDir private Path folder;

  private final HttpClient stranger = HttpClient.newHttpClient();
  private RunningSite site;

  @BeforeEach
  void start() throws IOException {
    RunningSite.copyGarden(folder);
    site = RunningSite.owned(folder);
  }

  @AfterEach
  void stop() {
    site.close();
  }

  private HttpResponse<String> ask(HttpRequest.Builder request) throws Exception {
    return stranger.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create(site.address()).resolve(path));
  }

  private HttpResponse<String> show(String key) throws Exception {
    return ask(to("/enter").POST(HttpRequest.BodyPublishers.ofString("key=" + key)));
  }

  private HttpResponse<String> post(String path, String cookie, String fields) throws Exception {
    return ask(
        to(path)
            .header("Cookie", cookie)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("token=" + fields + "&form=1")));
  }

  private String enter() throws Exception {
    HttpResponse<String> let = show(site.ownKeys().get(site.ownKeys().size() - 1));
    assertThat(let.statusCode()).isEqualTo(200);
    String cookie = let.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie)
        .contains("starchfilm-" + site.port() + "=", "HttpOnly", "SameSite=Strict", "Max-Age=");
    // A redirect would come without the new cookie where a file or another site led here.
    assertThat(let.body()).contains("http-equiv=\"refresh\"");
    return cookie.split(";", 2)[0];
  }

  @Test
  void nothingIsReadOrWrittenWithoutAKey() throws Exception {
    for (String path : new String[] {"/", "/trials", "/compare", "/photo?file=4-blend.json&n=0"}) {
      HttpResponse<String> refused = ask(to(path));
      assertThat(refused.statusCode()).as(path).isEqualTo(401);
      assertThat(refused.body()).doesNotContain("token", folder.toString(), "Potato");
      assertThat(refused.headers().firstValue("Set-Cookie")).isEmpty();
    }
    assertThat(post("/trial/note", "", "x").statusCode()).isEqualTo(401);
    assertThat(post("/stop", "", "x").statusCode()).isEqualTo(401);
    assertThat(show("wrong-wrong-wrong").statusCode()).isEqualTo(401);
    assertThat(ask(to("/?key=wrong")).statusCode()).isEqualTo(401);
  }

  @Test
  void previewsAndHeadLeaveTheKeyGoodAndItWorksOnce() throws Exception {
    String key = site.ownKeys().get(0);
    ask(to("/?key=" + key).method("HEAD", HttpRequest.BodyPublishers.noBody()));
    assertThat(ask(to("/?key=" + key)).body()).contains("action=\"/enter\"");

    String cookie = enter();

    assertThat(ask(to("/trials").header("Cookie", cookie)).statusCode()).isEqualTo(200);
    assertThat(show(key).statusCode()).as("used").isEqualTo(401);
    assertThat(site.ownKeys()).as("the next browser's").hasSize(2).doesNotHaveDuplicates();
  }

  @Test
  void oneBrowserIsPutOutAndTheOthersStay() throws Exception {
    String owner = enter();
    String lost = enter();
    String kept = enter();
    String page = ask(to("/trials").header("Cookie", owner)).body();
    List<String> listed = listed(page);
    assertThat(listed).as("neither cookies nor the owner").hasSize(2).doesNotContain(lost, kept);
    assertThat(page).contains("on this machine, last seen", "Put all others out");

    // The last seen stands first, so it is the one that stays.
    assertThat(ask(to("/trials").header("Cookie", kept)).statusCode()).isEqualTo(200);
    String first = listed(ask(to("/trials").header("Cookie", owner)).body()).get(1);
    String token = RunningSite.hidden(page, "token");
    assertThat(post("/put-out", owner, token + "&browser=" + first).statusCode()).isEqualTo(200);

    assertThat(ask(to("/trials").header("Cookie", lost)).statusCode()).isEqualTo(401);
    assertThat(ask(to("/trials").header("Cookie", kept)).statusCode()).isEqualTo(200);
    assertThat(listed(ask(to("/trials").header("Cookie", owner)).body())).hasSize(1);
  }

  private static List<String> listed(String page) {
    return Pattern.compile("name=\"browser\" value=\"([^\"]+)\"")
        .matcher(page)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void loggingOutAndPuttingOthersOutTakeTheCookiesBack() throws Exception {
    String first = enter();
    String second = enter();
    String page = ask(to("/trials").header("Cookie", second)).body();
    String token = RunningSite.hidden(page, "token");

    assertThat(post("/put-out", second, token).statusCode()).isEqualTo(200);
    assertThat(ask(to("/trials").header("Cookie", first)).statusCode()).isEqualTo(401);
    assertThat(ask(to("/trials").header("Cookie", second)).statusCode()).isEqualTo(200);

    assertThat(post("/leave", second, "wrong").statusCode()).isEqualTo(403);
    assertThat(post("/leave", second, token).statusCode()).isEqualTo(200);
    assertThat(ask(to("/trials").header("Cookie", second)).statusCode()).isEqualTo(401);
  }
}
