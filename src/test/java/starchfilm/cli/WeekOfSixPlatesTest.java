package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A kitchen's week with six plates on a clock that is set, by commands alone; the page beside it
 * says the same at every hour. What the scale showed is invented.
 */
class WeekOfSixPlatesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private volatile Instant now = Instant.EPOCH;
  private final Clock clock = ((InstantSource) () -> now).withZone(ZoneOffset.UTC);

  private void at(String moment) {
    now = LocalDateTime.parse(moment).toInstant(ZoneOffset.UTC);
  }

  private String run(String... words) {
    Terminal terminal = new Terminal(folder, clock);
    assertThat(terminal.run(words)).as(String.join(" ", words) + terminal.err()).isZero();
    return terminal.out().replaceAll("\\s+", " ");
  }

  private void start(String name, String cooked, String... more) {
    String[] words = new String[more.length + 4];
    words[0] = "new";
    words[1] = cooked;
    words[2] = "--name";
    words[3] = name;
    System.arraycopy(more, 0, words, 4, more.length);
    run(words);
  }

  private void note(String file, String... what) {
    String[] words = new String[what.length + 2];
    words[0] = "note";
    words[1] = file;
    System.arraycopy(what, 0, words, 2, what.length);
    run(words);
  }

  /** What the command says now; the page says every sentence of it. */
  private JsonNode today(OpenPage page) throws Exception {
    JsonNode today = JSON.readTree(run("today", ".", "--json", "-"));
    String shown = page.shown("today/all");
    String said = run("today", ".");
    assertThat(shown).contains(today.at("/headline/0").asText());
    assertThat(said).contains(today.at("/headline/0").asText());
    for (JsonNode plate : today.path("rows")) {
      assertThat(shown).contains(plate.path("sentence").asText());
      assertThat(said).contains(plate.path("sentence").asText());
    }
    return today;
  }

  private static String first(JsonNode today) {
    return today.at("/rows/0/sentence").asText();
  }

  private static String need(JsonNode today, String name) {
    for (JsonNode plate : today.path("rows")) {
      String plates = "[" + plate.path("numbers").asText() + "]";
      if ((plate.path("name").asText() + " " + plates).equals(name)) {
        return plate.path("need").asText();
      }
    }
    return "";
  }

  @Test
  void everyDayHasItsAnswer() throws Exception {
    at("2026-05-04T18:40");
    start(
        "Windows",
        "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass; today 18:00; kitchen 21C,50%",
        "--plates",
        "2x300x200mm glass",
        "--poured-mass",
        "150g",
        "--tare",
        "600g");
    start(
        "Thin",
        "12 g tapioca, 3 g glycerol, 200 g water; 30x20cm glass; today 17:30; workroom 23C,40%",
        "--speed",
        "1",
        "--wet",
        "1.5mm",
        "--tare",
        "598g");
    start(
        "Shed tray",
        "20 g potato, 7 g glycerol, 345 g water; 30x20cm glass, 6 mm; today 18:30; shed 16C,75%");
    start(
        "Blend",
        "20 g tapioca, 7 g glycerol, 340 g water; 30x20cm glass, 3 mm; today 10:00; kitchen"
            + " 21C,50%",
        "--tare",
        "612g");
    start(
        "Round",
        "20 g potato, 5 g glycerol, 340 g water; 24 cm round steel, 3 mm; today 12:00; kitchen"
            + " 21C,50%",
        "--tare",
        "410g");
    try (OpenPage page = new OpenPage()) {
      at("2026-05-04T20:00");
      assertThat(first(today(page))).startsWith("Dry Shed tray faster: mould may show from");
      note("thin.json", "--weighed", "660g");

      at("2026-05-05T07:32");
      note("thin.json", "--weighed", "605g");
      note("blend.json", "--weighed", "722g");
      note("round.json", "--weighed", "494g");
      note("windows.json", "--weighed", "705g");
      JsonNode tuesday = today(page);
      assertThat(first(tuesday))
          .startsWith("Peel Thin now: ready when the scale shows 60")
          .endsWith("it showed 605 g on Tue 5 May, 7:32.");
      assertThat(need(tuesday, "Windows [2]")).isEqualTo("weigh");
      assertThat(need(tuesday, "Blend [1]")).isEqualTo("wait");
      note("thin.json", "--off", "--thickness", "0.062; 70");
      note("windows.json", "--of", "2", "--weighed", "709g");

      at("2026-05-06T07:35");
      note("blend.json", "--weighed", "655g");
      note("windows.json", "--weighed", "636g");
      note("windows.json", "--of", "2", "--weighed", "645g");
      note("round.json", "--given-up", "the cat");
      JsonNode wednesday = today(page);
      assertThat(wednesday.path("rows")).hasSize(4);
      assertThat(need(wednesday, "Round [1]")).isEmpty();
      assertThat(need(wednesday, "Thin [1]")).isEmpty();
      assertThat(page.shown("trials")).contains("given up").contains("off the plate");

      at("2026-05-07T07:32");
      note("windows.json", "--weighed", "611g");
      note("windows.json", "--of", "2", "--weighed", "615g");
      note("blend.json", "--weighed", "628g");
      JsonNode thursday = today(page);
      assertThat(first(thursday)).startsWith("Dry Shed tray faster: mould may show from about Fri");
      assertThat(need(thursday, "Windows [1]")).isEqualTo("peel");
      assertThat(need(thursday, "Windows [2]")).isNotEqualTo("peel");
      note("windows.json", "--of", "1", "--off");
      note("windows.json", "--of", "1", "--thickness", "112; 118");

      at("2026-05-07T19:02");
      note("windows.json", "--of", "2", "--weighed", "611g");
      note("blend.json", "--weighed", "627g");
      JsonNode evening = today(page);
      assertThat(need(evening, "Windows [2]")).isEqualTo("peel");
      assertThat(need(evening, "Blend [1]")).isEqualTo("peel");
      note("windows.json", "--of", "2", "--thickness", "121; 131");
      note("blend.json", "--off", "--thickness", "140");
      assertThat(page.shown("trial/forecast?file=windows.json"))
          .contains("Between the plates: thickness 115 µm (plate 1), 126 µm (plate 2)");

      at("2026-05-09T09:05");
      assertThat(first(today(page)))
          .startsWith("Check Shed tray for mould: it may have shown since about Fri 8 May");
      note("shed-tray.json", "--fault", "mould", "--where", "middle", "--given-up", "mould");
      assertThat(today(page).at("/headline/0").asText()).isEqualTo("No plate is drying.");

      at("2026-05-10T10:00");
      assertThat(run("learn", ".")).contains("Your room \"kitchen\"").contains("from 4 plates");
      assertThat(today(page).path("rows")).isEmpty();
    }
  }

  /** The pages of the folder, opened by the command, on the same clock. */
  private final class OpenPage implements AutoCloseable {
    private final HttpClient client = HttpClient.newHttpClient();
    private String cookie = "none";
    private final Terminal terminal = new Terminal(folder, clock);
    private final CompletableFuture<Integer> exit =
        CompletableFuture.supplyAsync(() -> terminal.run("open", "--no-open", "--any-user"));
    private final URI address;

    OpenPage() throws InterruptedException {
      while (!terminal.out().contains("Ctrl+C") && !exit.isDone()) {
        Thread.sleep(20);
      }
      Matcher said = Pattern.compile("http://\\S+/").matcher(terminal.out());
      assertThat(said.find()).as(terminal.err()).isTrue();
      address = URI.create(said.group());
    }

    /** The words of a page. */
    String shown(String path) throws Exception {
      return body(HttpRequest.newBuilder(address.resolve(path)))
          .replaceAll("<[^>]*>", " ")
          .replace("&#39;", "'")
          .replace("&quot;", "\"")
          .replaceAll("\\s+", " ");
    }

    private String body(HttpRequest.Builder request) throws Exception {
      HttpResponse<String> answer =
          client.send(
              request.header("Cookie", cookie).build(), HttpResponse.BodyHandlers.ofString());
      answer.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.split(";")[0]);
      assertThat(answer.statusCode()).isEqualTo(200);
      return answer.body().replace('\u00A0', ' ');
    }

    @Override
    public void close() {
      try {
        stop();
      } catch (Exception e) {
        throw new AssertionError("the pages did not stop", e);
      }
    }

    private void stop() throws Exception {
      String token =
          body(HttpRequest.newBuilder(address.resolve("trials")))
              .replaceFirst("(?s).*?name=\"token\" value=\"([^\"]*).*", "$1");
      body(
          HttpRequest.newBuilder(address.resolve("stop"))
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString("token=" + token)));
      exit.get(20, TimeUnit.SECONDS);
    }
  }
}
