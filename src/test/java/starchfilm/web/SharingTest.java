package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other devices get in with a key that works once. */
class SharingTest {
  @TempDir private Path folder;

  @Test
  void aKeyLetsOneDeviceInAndWorksOnce() throws IOException {
    try (RunningSite site = RunningSite.shared(folder)) {
      assumeFalse(site.addressesForOthers().isEmpty(), "this machine is on no network");
      String address = site.addressesForOthers().get(0);
      String key = site.keys().get(0);

      assertThat(from(site, address + "trials", "").statusCode()).isEqualTo(401);
      assertThat(from(site, address + "?key=wrong", "").statusCode()).isEqualTo(401);

      // Looking at the address, as a preview does, leaves the key good.
      assertThat(from(site, address + "?key=" + key, "").body()).contains("name=\"key\"");
      HttpResponse<String> let = shown(site, address, key);
      assertThat(let.statusCode()).isEqualTo(200);
      String cookie = let.headers().firstValue("Set-Cookie").orElseThrow();
      assertThat(cookie).contains("HttpOnly").contains("SameSite=Strict");
      String device = cookie.split(";", 2)[0];

      assertThat(from(site, address + "trials", device).statusCode()).isEqualTo(200);
      assertThat(from(site, address + "?key=" + key, "").statusCode()).isEqualTo(401);
      assertThat(shown(site, address, key).statusCode()).isEqualTo(401);
      assertThat(from(site, address + "trials", device).body())
          .contains("Log out here")
          .doesNotContain("Stop it now", "Put this one out");
      assertThat(site.get("/trials").body())
          .contains("Stop it now", "Put this one out", "at " + URI.create(address).getHost())
          .doesNotContain("Log out here");
      assertThat(stop(site, address, device).statusCode()).as("the owner's").isEqualTo(403);
      assertThat(site.keys()).hasSize(2).doesNotHaveDuplicates();
      assertThat(site.get("/trials").statusCode()).as("this machine").isEqualTo(200);
    }
  }

  @Test
  void withoutSharingNobodyElseIsAnswered() throws IOException {
    try (RunningSite site = RunningSite.over(folder)) {
      assertThat(site.addressesForOthers()).isEmpty();
      assertThat(site.keys()).isEmpty();
    }
  }

  private static HttpResponse<String> shown(RunningSite site, String address, String key) {
    return site.send(
        HttpRequest.newBuilder(URI.create(address + "enter"))
            .POST(HttpRequest.BodyPublishers.ofString("key=" + key)));
  }

  private static HttpResponse<String> stop(RunningSite site, String address, String device) {
    return site.send(
        HttpRequest.newBuilder(URI.create(address + "stop"))
            .header("Cookie", device)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("token=x")));
  }

  private static HttpResponse<String> from(RunningSite site, String address, String cookie) {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address));
    return site.send(cookie.isEmpty() ? request : request.header("Cookie", cookie));
  }
}
