package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.advice.Adviser;
import starchfilm.advice.Knowledge;
import starchfilm.advice.RuleBook;
import starchfilm.doubt.FactorModel;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.trial.TrialForecaster;
import starchfilm.web.http.Serving;

/** The pages over a folder of its own, and what a browser without a screen can do with them. */
final class RunningSite implements AutoCloseable {
  static final Instant NOON = Instant.parse("2026-04-20T12:00:00Z");

  /** Enough for a band; the pages are looked at, not the figures. */
  private static final int FEW_DRAWS = 20;

  private final NotebookSite site;
  private final Path folder;
  private final List<Throwable> troubles = new CopyOnWriteArrayList<>();
  private final List<String> keys = new CopyOnWriteArrayList<>();
  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();

  private RunningSite(Path folder, boolean lan, Runnable beforeWork) throws IOException {
    this.folder = folder;
    Workshops workshops = new Workshops();
    Clock clock = Clock.fixed(NOON, ZoneOffset.UTC);
    TrialForecaster forecaster = new TrialForecaster(workshops.soFar(clock), FEW_DRAWS);
    this.site =
        NotebookSite.start(
            new Serving(0, lan, keys::add, troubles::add),
            folder,
            clock,
            new UseCases(
                trial -> {
                  beforeWork.run();
                  return forecaster.forecast(trial);
                },
                new TrialForecaster(FactorModel.textbook(), FEW_DRAWS)::sketch,
                FEW_DRAWS,
                new Adviser(RuleBook.packed(), Knowledge.textbook(), FEW_DRAWS),
                (root, trials) -> {
                  beforeWork.run();
                  return Workshop.taughtBy(root, trials);
                },
                workshops,
                starchfilm.cli.CommandQuestions.over(folder)));
  }

  /** Over a folder as it is. */
  static RunningSite over(Path folder) throws IOException {
    return over(folder, () -> {});
  }

  /** Over a folder as it is; before each full forecast and each learning something is done. */
  static RunningSite over(Path folder, Runnable beforeWork) throws IOException {
    return new RunningSite(folder, false, beforeWork);
  }

  /** Over a copy of the invented garden. */
  static RunningSite overGarden(Path folder) throws IOException {
    copyGarden(folder);
    return over(folder);
  }

  /** With other devices let in. */
  static RunningSite shared(Path folder) throws IOException {
    RunningSite running = new RunningSite(folder, true, () -> {});
    running.site.server().showKey();
    return running;
  }

  static void copyGarden(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(Path.of("formulations/garden"))) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  String address() {
    return site.server().address();
  }

  List<String> addressesForOthers() {
    return site.server().addressesForOthers();
  }

  List<String> keys() {
    return keys;
  }

  Path folder() {
    return folder;
  }

  int port() {
    return URI.create(address()).getPort();
  }

  NotebookSite site() {
    return site;
  }

  HttpResponse<String> get(String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(uri(path)).GET();
    return send(headers.length == 0 ? request : request.headers(headers));
  }

  /** A page that may take its time to be made. */
  HttpResponse<String> getMade(String path) {
    HttpResponse<String> answer = get(path);
    for (int i = 0; i < 60 && answer.headers().firstValue("Refresh").isPresent(); i++) {
      answer = get(path);
    }
    return answer;
  }

  /** A form as our own page sends it: with the token, from our own origin. */
  HttpResponse<String> post(String path, String... fields) {
    String[] marked = new String[fields.length + 2];
    System.arraycopy(fields, 0, marked, 0, fields.length);
    marked[fields.length] = "token";
    marked[fields.length + 1] = token();
    return postBare(path, List.of(), marked);
  }

  HttpResponse<String> postBare(String path, List<String> headers, String... fields) {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(encoded(fields[i])).append('=');
      body.append(encoded(fields[i + 1]));
    }
    HttpRequest.Builder request =
        HttpRequest.newBuilder(uri(path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString()));
    return send(headers.isEmpty() ? request : request.headers(headers.toArray(String[]::new)));
  }

  /** What a page hides in its forms. */
  String token() {
    return hidden(get("/notebook").body(), "token");
  }

  static String hidden(String page, String field) {
    Matcher matcher =
        Pattern.compile("name=\"" + Pattern.quote(field) + "\" value=\"([^\"]*)\"").matcher(page);
    assertThat(matcher.find()).as("hidden field " + field).isTrue();
    return matcher.group(1);
  }

  /** A request byte by byte, for what no client library would send. */
  String raw(String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", port())) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      ByteArrayOutputStream answer = new ByteArrayOutputStream();
      InputStream in = socket.getInputStream();
      in.transferTo(answer);
      return answer.toString(StandardCharsets.UTF_8);
    }
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(
          request.timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  URI uri(String path) {
    return URI.create(address().substring(0, address().length() - 1) + path);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** Stops the pages; a fault of the program itself that nobody saw fails the test. */
  @Override
  public void close() {
    site.close();
    assertThat(troubles).isEmpty();
  }
}
