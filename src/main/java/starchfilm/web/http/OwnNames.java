package starchfilm.web.http;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The names under which a server of this machine is reached. */
final class OwnNames {
  private static final int USUAL_PORT = 80;
  private static final String LOOPBACK = "127.0.0.1";

  private OwnNames() {}

  /**
   * The Host headers that mean this server.
   *
   * @param lan true where the network's addresses of this machine count too
   * @return in lower case; names of the network are not among them, since anyone can make a name
   *     that points here
   */
  static Set<String> hosts(int port, boolean lan) {
    return Stream.concat(names(lan), Stream.of("localhost", "[::1]"))
        .flatMap(name -> Stream.of(name + ":" + port, port == USUAL_PORT ? name : ""))
        .filter(host -> !host.isEmpty())
        .collect(Collectors.toSet());
  }

  /**
   * The page's addresses.
   *
   * @param lan true where the network's addresses count too
   */
  static List<String> addresses(int port, boolean lan) {
    return names(lan).map(name -> "http://" + name + ":" + port + "/").toList();
  }

  private static Stream<String> names(boolean lan) {
    return Stream.concat(Stream.of(LOOPBACK), lan ? networkAddresses().stream() : Stream.of());
  }

  /** The addresses of this machine on its networks. */
  static List<String> networkAddresses() {
    List<String> found = new ArrayList<>();
    try {
      for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        for (InetAddress address : Collections.list(network.getInetAddresses())) {
          if (address instanceof Inet4Address && !address.isLoopbackAddress() && network.isUp()) {
            found.add(address.getHostAddress());
          }
        }
      }
    } catch (SocketException e) {
      // Then the page is only reached from this machine, which the printed addresses show.
      return List.of();
    }
    Collections.sort(found);
    return found;
  }
}
