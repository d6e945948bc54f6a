package starchfilm.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * How the pages bear many readers, and how quickly a slider is answered; run by hand.
 *
 * <p>{@code java -cp target/test-classes:target/classes:... starchfilm.web.PageLoadBenchmark}
 * prints the answers' times in milliseconds and the memory in use after collecting garbage, before
 * and after the run.
 */
public final class PageLoadBenchmark {
  private static final int READERS = 50;
  private static final int REQUESTS = 10_000;
  private static final int SLIDER_MOVES = 200;
  private static final int WARM_UP = 60;
  private static final List<String> PATHS =
      List.of("/notebook", "/plates", "/compare", "/trial?file=4-blend.json", "/jar");

  private PageLoadBenchmark() {}

  /**
   * Runs both measurements.
   *
   * @param args none
   * @throws Exception where a request fails
   */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("starchfilm-load-");
    DryingTrial.in(folder);
    try (RunningSite site = RunningSite.overGarden(folder)) {
      slider(site);
      // Once around before the first look at the memory, so that caches are filled.
      readers(site, REQUESTS / 10);
      long before = usedBytes();
      readers(site, REQUESTS);
      long after = usedBytes();
      System.out.printf(
          Locale.ROOT, "memory in use: %.1f MB before, %.1f MB after%n", before / 1e6, after / 1e6);
    }
  }

  private static void slider(RunningSite site) {
    double[] milliseconds = new double[SLIDER_MOVES];
    for (int i = -WARM_UP; i < SLIDER_MOVES; i++) {
      String path =
          String.format(
              Locale.ROOT,
              "/plan/sketch?base=4-blend.json&was=4-blend.json&wet=%.1f&plasticiser=%d",
              1 + (i + WARM_UP) % 60 / 10.0,
              20 + (i + WARM_UP) % 25);
      long start = System.nanoTime();
      HttpResponse<String> answer = site.get(path, "HX-Request", "true");
      if (answer.statusCode() != 200) {
        throw new IllegalStateException(path + " gave " + answer.statusCode());
      }
      if (i >= 0) {
        milliseconds[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    print("a slider's answer", milliseconds);
  }

  private static void readers(RunningSite site, int requests) throws Exception {
    HttpClient client = HttpClient.newHttpClient();
    ExecutorService readers = Executors.newFixedThreadPool(READERS);
    AtomicInteger next = new AtomicInteger();
    AtomicInteger errors = new AtomicInteger();
    double[] milliseconds = new double[requests];
    long start = System.nanoTime();
    List<Future<?>> all =
        IntStream.range(0, READERS)
            .<Future<?>>mapToObj(
                reader ->
                    readers.submit(
                        () -> {
                          for (int i = next.getAndIncrement();
                              i < requests;
                              i = next.getAndIncrement()) {
                            URI page = site.uri(PATHS.get(i % PATHS.size()));
                            long sent = System.nanoTime();
                            if (status(client, page) != 200) {
                              errors.incrementAndGet();
                            }
                            milliseconds[i] = (System.nanoTime() - sent) / 1e6;
                          }
                        }))
            .toList();
    for (Future<?> one : all) {
      one.get();
    }
    readers.shutdown();
    readers.awaitTermination(1, TimeUnit.MINUTES);
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%d requests from %d readers at once: %.1f s, %d errors%n",
        requests,
        READERS,
        seconds,
        errors.get());
    print("an answer then", milliseconds);
  }

  private static int status(HttpClient client, URI page) {
    try {
      return client
          .send(HttpRequest.newBuilder(page).build(), HttpResponse.BodyHandlers.discarding())
          .statusCode();
    } catch (IOException e) {
      return -1;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return -1;
    }
  }

  private static void print(String what, double[] milliseconds) {
    double[] sorted = milliseconds.clone();
    Arrays.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "%s: median %.0f ms, 95 %% below %.0f ms, worst %.0f ms%n",
        what,
        sorted[sorted.length / 2],
        sorted[(int) (sorted.length * 0.95)],
        sorted[sorted.length - 1]);
  }

  private static long usedBytes() {
    Runtime runtime = Runtime.getRuntime();
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
