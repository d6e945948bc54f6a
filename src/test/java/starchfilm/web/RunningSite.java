package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.PlateParameters;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.web.http.Serving;

/** The pages over a folder of its own, and what a browser without a screen can do with them. */
final class RunningSite implements AutoCloseable {
  static final Instant NOON = Instant.parse("2026-04-20T12:00:00Z");

  private final NotebookSite site;
  private final Path folder;
  private final List<Throwable> troubles = new CopyOnWriteArrayList<>();
  private final List<String> keys = new CopyOnWriteArrayList<>();
  private final List<String> ownKeys = new CopyOnWriteArrayList<>();
  private final PageClient visitor;

  private RunningSite(Path folder, boolean lan, boolean owned, Runnable beforeWork)
      throws IOException {
    this.folder = folder;
    Clock clock = Clock.fixed(NOON, ZoneOffset.UTC);
    Workshops workshops =
        new Workshops(clock) {
          @Override
          public PlateParameters drying(Trial trial) {
            beforeWork.run();
            return super.drying(trial);
          }

          @Override
          public Workshop learn(Path home, List<Trial> trials, Runnable requireWanted) {
            beforeWork.run();
            return super.learn(home, trials, requireWanted);
          }
        };
    this.site =
        new NotebookSite(
            new Serving(
                0,
                lan,
                keys::add,
                owned
                    ? Optional.of(link -> ownKeys.add(link.replaceFirst(".*key=", "")))
                    : Optional.empty(),
                troubles::add),
            folder,
            clock,
            workshops);
    this.visitor = new PageClient(address());
  }

  /** Over a folder as it is. */
  static RunningSite over(Path folder) throws IOException {
    return over(folder, () -> {});
  }

  /** Over a folder as it is; before each full forecast and each learning something is done. */
  static RunningSite over(Path folder, Runnable beforeWork) throws IOException {
    return new RunningSite(folder, false, false, beforeWork);
  }

  /** Over a copy of the invented garden. */
  static RunningSite overGarden(Path folder) throws IOException {
    copyGarden(folder);
    return over(folder);
  }

  /** With other devices let in. */
  static RunningSite shared(Path folder) throws IOException {
    RunningSite running = new RunningSite(folder, true, false, () -> {});
    running.site.server().showKey();
    return running;
  }

  /** With a key for each browser of this machine, as the command starts it. */
  static RunningSite owned(Path folder) throws IOException {
    RunningSite running = new RunningSite(folder, false, true, () -> {});
    running.site.server().showOwnKey();
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

  List<String> ownKeys() {
    return ownKeys;
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
    return visitor.get(path, headers);
  }

  /** A page that may take its time to be made. */
  HttpResponse<String> getMade(String path) {
    return visitor.getMade(path);
  }

  /** A form as our own page sends it: with the token, from our own origin. */
  HttpResponse<String> post(String path, String... fields) {
    return visitor.post(path, fields);
  }

  HttpResponse<String> postBare(String path, List<String> headers, String... fields) {
    return visitor.postBare(path, headers, fields);
  }

  HttpResponse<String> postPhoto(String file, String name, byte[] content) {
    return visitor.postPhoto(file, token(), name, content);
  }

  HttpResponse<String> postFile(
      String path, String input, String file, String name, byte[] content) {
    return visitor.postFile(path, input, file, token(), name, content);
  }

  /** What a page hides in its forms. */
  String token() {
    return visitor.token();
  }

  static String hidden(String page, String field) {
    return PageClient.hidden(page, field);
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
    return visitor.send(request);
  }

  URI uri(String path) {
    return visitor.uri(path);
  }

  /** Stops the pages; a fault of the program itself that nobody saw fails the test. */
  @Override
  public void close() {
    site.close();
    assertThat(troubles).isEmpty();
  }
}
