package starchfilm.web;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * How soon the first page is there, how quickly the browser redraws for a slider, and how the pages
 * bear many readers; the packed program in a process of its own, run by hand.
 *
 * <p>{@code java -cp "target/test-classes:target/classes:$(cat target/classpath)"
 * starchfilm.web.ServedPagesBenchmark target/starchfilm.jar}; with a number behind it the readers
 * alone, for so many minutes.
 */
public final class ServedPagesBenchmark {
  private static final int STARTS = 9;
  private static final int MOVES = 200;
  private static final int READERS = 50;
  private static final int REQUESTS = 10_000;
  private static final List<String> PATHS =
      List.of(
          "/trials",
          "/plates",
          "/compare",
          "/trial?file=4-blend.json",
          "/trial/edit?file=4-blend.json",
          "/plan/wishes",
          "/jar?amount=500&origin=bought&label=90");

  /** Moves a slider as a hand does, each move once the one before is drawn; the times in ms. */
  private static final String SLIDE =
      """
      const done = arguments[arguments.length - 1];
      const moves = arguments[0];
      const wet = document.getElementById('wet');
      const glycerol = document.getElementById('plasticiser');
      const times = [];
      let sent = 0;
      function move() {
        const slider = times.length % 2 ? wet : glycerol;
        const span = slider === wet ? 6 : 40;
        const value = Number(slider.min) + (times.length * 0.618034 % 1) * span;
        slider.value = value;
        sent = performance.now();
        slider.dispatchEvent(new Event('input', {bubbles: true}));
      }
      document.body.addEventListener('htmx:afterSwap', () =>
        requestAnimationFrame(() => setTimeout(() => {
          times.push(performance.now() - sent);
          if (times.length < moves) { move(); } else { done(times); }
        }, 0)));
      move();
      """;

  private ServedPagesBenchmark() {}

  /**
   * Runs all measurements.
   *
   * @param arguments the packed program; how long the readers read (min), if that alone is wanted
   * @throws Exception where a request fails
   */
  public static void main(String[] arguments) throws Exception {
    Path jar = Path.of(arguments[0]);
    Path folder = Files.createTempDirectory("starchfilm-load-");
    DryingTrial.in(folder);
    RunningSite.copyGarden(folder);
    if (arguments.length > 1) {
      readForMinutes(jar, folder, Double.parseDouble(arguments[1]));
      return;
    }
    double[] starts = new double[STARTS];
    for (int i = 0; i < STARTS; i++) {
      long start = System.nanoTime();
      try (ServedProgram program = ServedProgram.start(jar, folder)) {
        requireFound(program.status("/trials"));
        starts[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    print("first page after the command", starts);
    try (ServedProgram program = ServedProgram.start(jar, folder)) {
      slider(program, "a slider's redraw, first moves", 20);
      slider(program, "a slider's redraw", MOVES);
      // Once around before the first look at the memory, so that caches are filled.
      readers(program, read -> read < REQUESTS / 10);
      memory(program, "at the start");
      readers(program, read -> read < REQUESTS / 2);
      memory(program, "half-way");
      readers(program, read -> read < REQUESTS / 2);
      memory(program, "at the end");
    }
  }

  private static void readForMinutes(Path jar, Path folder, double minutes) throws Exception {
    try (ServedProgram program = ServedProgram.start(jar, folder)) {
      readers(program, read -> read < REQUESTS / 10);
      memory(program, "at the start");
      for (String when : List.of("half-way", "at the end")) {
        long end = System.nanoTime() + (long) (minutes / 2 * 60e9);
        readers(program, read -> System.nanoTime() - end < 0);
        memory(program, when);
      }
    }
  }

  private static void slider(ServedProgram program, String what, int moves) {
    try (Chrome.Shared browser = Chrome.open()) {
      ChromeDriver driver = browser.driver();
      driver.manage().timeouts().scriptTimeout(java.time.Duration.ofMinutes(5));
      driver.get(program.page("/plan?base=4-blend.json").toString());
      driver.findElement(By.id("wet"));
      List<?> times = (List<?>) driver.executeAsyncScript(SLIDE, moves);
      print(what, times.stream().mapToDouble(time -> ((Number) time).doubleValue()).toArray());
    }
  }

  /** Readers that go on while they should, given how many pages were asked for so far. */
  private static void readers(ServedProgram program, IntPredicate goOn) throws Exception {
    ExecutorService readers = Executors.newFixedThreadPool(READERS);
    AtomicInteger next = new AtomicInteger();
    Queue<Double> milliseconds = new ConcurrentLinkedQueue<>();
    long start = System.nanoTime();
    List<Future<?>> all =
        IntStream.range(0, READERS)
            .<Future<?>>mapToObj(
                reader ->
                    readers.submit(
                        () -> {
                          for (int i = next.getAndIncrement();
                              goOn.test(i);
                              i = next.getAndIncrement()) {
                            long sent = System.nanoTime();
                            requireFound(program.status(PATHS.get(i % PATHS.size())));
                            milliseconds.add((System.nanoTime() - sent) / 1e6);
                          }
                          return null;
                        }))
            .toList();
    for (Future<?> one : all) {
      one.get();
    }
    readers.shutdown();
    print(
        String.format(
            Locale.ROOT,
            "%d requests by %d readers at once in %.1f s, each",
            milliseconds.size(),
            READERS,
            (System.nanoTime() - start) / 1e9),
        milliseconds.stream().mapToDouble(time -> time).toArray());
  }

  /** An answer that is no page ends the run. */
  private static void requireFound(int status) {
    if (status != 200) {
      throw new IllegalStateException("status " + status);
    }
  }

  private static void memory(ServedProgram program, String when) throws Exception {
    System.out.printf(
        Locale.ROOT, "heap after collection %s: %.1f MB%n", when, program.usedBytes() / 1e6);
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
}
