package starchfilm.web.http;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Serves pages on this machine until it is closed.
 *
 * <p>Only this machine can reach it, unless other devices are let in with a key. Each address has a
 * fixed number of threads of its own, so that strangers on the network cannot keep this machine
 * waiting; requests beyond wait their turn.
 */
public final class PageServer implements AutoCloseable {
  private static final int LONGEST_REQUEST_S = 60;
  private static final int WAITING_CONNECTIONS = 200;

  /** How long a stop waits for what is being saved. */
  private static final int PATIENCE_S = 10;

  private final List<HttpServer> servers;
  private final List<RequestThreads> threads = new ArrayList<>();
  private final RequestHandler front;
  private final Guard guard;
  private final List<String> addresses;

  private PageServer(List<HttpServer> servers, Serving serving, Function<CsrfFields, Site> site) {
    this.servers = servers;
    int port = servers.get(0).getAddress().getPort();
    this.addresses = OwnNames.addresses(port, serving.lan());
    CsrfFields seal = new CsrfFields();
    this.guard = new Guard(serving, port, seal);
    this.front = new RequestHandler(guard, seal, site.apply(seal), serving.troubles());
    for (HttpServer server : servers) {
      RequestThreads own = new RequestThreads();
      threads.add(own);
      server.createContext(
          "/",
          exchange -> {
            own.headersAreIn();
            front.handle(exchange);
          });
      server.setExecutor(own);
      server.start();
    }
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
    List<HttpServer> servers = new ArrayList<>();
    try {
      servers.add(bound(InetAddress.getLoopbackAddress(), serving.port()));
      int port = servers.get(0).getAddress().getPort();
      if (serving.lan()) {
        for (String address : OwnNames.networkAddresses()) {
          servers.add(bound(InetAddress.getByName(address), port));
        }
      }
      return new PageServer(servers, serving, site);
    } catch (IOException | RuntimeException e) {
      servers.forEach(server -> server.stop(0));
      throw e;
    }
  }

  private static HttpServer bound(InetAddress address, int port) throws IOException {
    return HttpServer.create(new InetSocketAddress(address, port), WAITING_CONNECTIONS);
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

  /**
   * Shows the key for the first browser of this machine.
   *
   * @return the key; empty where none is needed
   */
  public Optional<String> showOwnKey() {
    return guard.showOwnKey();
  }

  /** Shows the key for the first other device; each later key is shown as soon as it is made. */
  public void showKey() {
    guard.showKey();
  }

  /**
   * Takes no more requests, lets those under way end so that what they save is whole, and stops.
   */
  @Override
  public void close() {
    front.close(PATIENCE_S);
    servers.forEach(server -> server.stop(0));
    threads.forEach(RequestThreads::close);
  }

  /**
   * The library reads these once, when it is first used. Without the first, an answer on a kept
   * connection waits for the other side's late acknowledgement, about 40 ms; the others end
   * requests that are sent a byte at a time. A value given on the command line stays.
   */
  private static void tellTheLibrary() {
    System.getProperties().putIfAbsent("sun.net.httpserver.nodelay", "true");
    System.getProperties()
        .putIfAbsent("sun.net.httpserver.maxReqTime", String.valueOf(LONGEST_REQUEST_S));
    System.getProperties()
        .putIfAbsent("sun.net.httpserver.maxRspTime", String.valueOf(LONGEST_REQUEST_S));
  }
}
