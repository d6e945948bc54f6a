package starchfilm.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.proof.OwnJava;

/** The packed program serving a folder as its launcher starts it, watched from outside. */
final class ServedProgram implements AutoCloseable {
  private static final Pattern ADDRESS = Pattern.compile("http://\\S+/");
  private static final Pattern USED = Pattern.compile("generation\\s.*used (\\d+)K");

  private final Process process;
  private final URI address;
  private final HttpClient client =
      HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();

  private ServedProgram(Process process, URI address) {
    this.process = process;
    this.address = address;
  }

  /** Starts it and waits until it says where it is. */
  static ServedProgram start(Path jar, Path folder) throws IOException {
    return start(OwnJava.packed(jar, "open", folder.toString(), "--no-open", "--any-user"));
  }

  /** Starts the one that is being tested, which need not be packed yet. */
  static ServedProgram startUnpacked(Path folder) throws IOException {
    return start(
        OwnJava.of("starchfilm.cli.Main", "open", folder.toString(), "--no-open", "--any-user"));
  }

  private static ServedProgram start(ProcessBuilder program) throws IOException {
    Process process = program.redirectErrorStream(true).start();
    StringBuilder told = new StringBuilder();
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      Matcher matcher = ADDRESS.matcher(line);
      if (matcher.find()) {
        passOn(said);
        return new ServedProgram(process, URI.create(matcher.group()));
      }
      told.append(line).append('\n');
    }
    throw new IOException("the program ended without an address:\n" + told);
  }

  /** What it says later, such as why a page failed, stands in the output of the tests. */
  private static void passOn(BufferedReader said) {
    Thread reading = new Thread(() -> said.lines().forEach(System.err::println), "served output");
    reading.setDaemon(true);
    reading.start();
  }

  /** The process, to be watched or killed. */
  Process process() {
    return process;
  }

  URI page(String path) {
    return address.resolve(path);
  }

  /** Asks for a page and throws it away. */
  int status(String path, String... headers) throws IOException, InterruptedException {
    HttpRequest.Builder request = HttpRequest.newBuilder(page(path));
    return client
        .send(
            (headers.length == 0 ? request : request.headers(headers)).build(),
            HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }

  /** The heap in use after collecting garbage (bytes). */
  long usedBytes() throws IOException, InterruptedException {
    command("GC.run");
    command("GC.run");
    long used = 0;
    for (String line : command("GC.heap_info")) {
      Matcher matcher = USED.matcher(line);
      if (matcher.find()) {
        used += 1024 * Long.parseLong(matcher.group(1));
      }
    }
    return used;
  }

  private List<String> command(String words) throws IOException, InterruptedException {
    Process asked =
        new ProcessBuilder(OwnJava.tool("jcmd"), String.valueOf(process.pid()), words)
            .redirectErrorStream(true)
            .start();
    List<String> lines = new ArrayList<>();
    try (BufferedReader said =
        new BufferedReader(new InputStreamReader(asked.getInputStream(), StandardCharsets.UTF_8))) {
      said.lines().forEach(lines::add);
    }
    if (asked.waitFor() != 0) {
      throw new IOException(String.join("\n", lines));
    }
    return lines;
  }

  @Override
  public void close() {
    process.destroy();
  }
}
