package starchfilm.web.http;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Serves pages on this machine until it is closed.
 *
 * <p>Only this machine can reach it, unless other devices are let in with a key. A fixed number of
 * threads answers; requests beyond wait their turn.
 */
public final class PageServer implements AutoCloseable {
  private static final int THREADS = 8;
  private static final int LONGEST_REQUEST_S = 60;
  private static final int WAITING_CONNECTIONS = 200;

  /** How long a stop waits for what is being saved. */
  private static final int PATIENCE_S = 10;

  private final HttpServer server;
  private final ExecutorService threads;
  private final RequestHandler front;
  private final Optional<OneTimeKey> key;
  private final List<String> addresses;

  private PageServer(
      HttpServer server,
      ExecutorService threads,
      RequestHandler front,
      Optional<OneTimeKey> key,
      List<String> addresses) {
    this.server = server;
    this.threads = threads;
    this.front = front;
    this.key = key;
    this.addresses = addresses;
  }

  /**
   * Starts serving.
   *
   * @param serving port and reach
   * @param site makes the pages, given what marks their forms as ours
   * @return the running server
   * @throws BindException where another program has the port
   * @throws IOException where the system gives no port
   */
  public static PageServer start(Serving serving, Function<CsrfFields, Site> site)
      throws IOException {
    tellTheLibrary();
    // A null address means every address of this machine.
    InetAddress reach = serving.lan() ? null : InetAddress.getLoopbackAddress();
    HttpServer server =
        HttpServer.create(new InetSocketAddress(reach, serving.port()), WAITING_CONNECTIONS);
    int port = server.getAddress().getPort();
    Optional<OneTimeKey> key =
        serving.lan() ? Optional.of(new OneTimeKey(serving.newKey())) : Optional.empty();
    String token = Secret.ofMachine();
    Guard guard = new Guard(OwnNames.hosts(port, serving.lan()), token, key);
    RequestHandler front =
        new RequestHandler(guard, site.apply(new CsrfFields(token)), serving.troubles());
    ExecutorService threads = Executors.newFixedThreadPool(THREADS, new Named());
    server.createContext("/", front);
    server.setExecutor(threads);
    server.start();
    return new PageServer(server, threads, front, key, OwnNames.addresses(port, serving.lan()));
  }

  /**
   * The page's address on this machine.
   *
   * @return such as {@code http://127.0.0.1:41233/}
   */
  public String address() {
    return addresses.get(0);
  }

  /**
   * The page's addresses for other devices.
   *
   * @return one a network; none where nobody else is let in
   */
  public List<String> addressesForOthers() {
    return addresses.subList(1, addresses.size());
  }

  /** Shows the key for the first other device; each later key is shown as soon as it is made. */
  public void showKey() {
    key.ifPresent(OneTimeKey::print);
  }

  /**
   * Takes no more requests, lets those under way end so that what they save is whole, and stops.
   */
  @Override
  public void close() {
    front.close(PATIENCE_S);
    server.stop(0);
    threads.shutdown();
    try {
      threads.awaitTermination(1, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * The library reads these once, when it is first used. Without the first, an answer on a kept
   * connection waits for the other side's late acknowledgement, about 40 ms; the others end
   * requests that are sent a byte at a time. A value given on the command line stays.
   */
  private static void tellTheLibrary() {
    setUnlessGiven("sun.net.httpserver.nodelay", "true");
    setUnlessGiven("sun.net.httpserver.maxReqTime", String.valueOf(LONGEST_REQUEST_S));
    setUnlessGiven("sun.net.httpserver.maxRspTime", String.valueOf(LONGEST_REQUEST_S));
  }

  private static void setUnlessGiven(String name, String value) {
    if (System.getProperty(name) == null) {
      System.setProperty(name, value);
    }
  }

  private static final class Named implements java.util.concurrent.ThreadFactory {
    private final AtomicInteger count = new AtomicInteger();

    @Override
    public Thread newThread(Runnable work) {
      Thread thread = new Thread(work, "page-" + count.incrementAndGet());
      thread.setDaemon(true);
      return thread;
    }
  }
}
