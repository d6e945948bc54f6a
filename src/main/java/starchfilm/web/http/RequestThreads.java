package starchfilm.web.http;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The threads that answer the requests of one address. A request whose headers are not all there
 * after a few seconds is cut off, so that connections that send a byte now and then cannot hold
 * every thread.
 *
 * <p>The server's library reads the headers on the thread that answers. To interrupt that thread
 * closes the connection it reads from ({@link java.nio.channels.InterruptibleChannel}); once {@link
 * #headersAreIn} was called it is never interrupted.
 */
final class RequestThreads implements Executor, AutoCloseable {
  private static final int THREADS = 32;
  private static final int HEADERS_WITHIN_S = 5;
  private static final int LOOK_EVERY_MS = 500;

  private final AtomicInteger count = new AtomicInteger();
  private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, this::named);
  private final ScheduledExecutorService watch =
      Executors.newSingleThreadScheduledExecutor(this::named);
  private final Map<Thread, HeaderReading> readings = new ConcurrentHashMap<>();

  private final ScheduledFuture<?> looks =
      watch.scheduleWithFixedDelay(
          () -> readings.values().forEach(HeaderReading::cutOffIfLate),
          LOOK_EVERY_MS,
          LOOK_EVERY_MS,
          TimeUnit.MILLISECONDS);

  RequestThreads() {}

  /** A request whose headers are being read. */
  private static final class HeaderReading {
    private final Thread thread;
    private final long endNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(HEADERS_WITHIN_S);
    private boolean ended;

    HeaderReading(Thread thread) {
      this.thread = thread;
    }

    synchronized void end() {
      ended = true;
    }

    synchronized void cutOffIfLate() {
      if (!ended && System.nanoTime() - endNs > 0) {
        ended = true;
        thread.interrupt();
      }
    }
  }

  @Override
  public void execute(Runnable request) {
    threads.execute(
        () -> {
          HeaderReading reading = new HeaderReading(Thread.currentThread());
          readings.put(Thread.currentThread(), reading);
          try {
            request.run();
          } finally {
            reading.end();
            readings.remove(Thread.currentThread());
            // The next request of this thread is not to blame for this one.
            Thread.interrupted();
          }
        });
  }

  /** Says, on the thread that answers, that the headers of its request are read. */
  void headersAreIn() {
    HeaderReading reading = readings.get(Thread.currentThread());
    if (reading != null) {
      reading.end();
    }
  }

  @Override
  public void close() {
    looks.cancel(false);
    watch.shutdownNow();
    threads.shutdown();
    try {
      threads.awaitTermination(1, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Thread named(Runnable work) {
    Thread thread = new Thread(work, "page-" + count.incrementAndGet());
    thread.setDaemon(true);
    return thread;
  }
}
