package starchfilm.web.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Decides who may ask.
 *
 * <p>A page from elsewhere that is open in the same browser can send requests here, and by a name
 * that it points at this machine it could even read the answers. So the Host header must be one of
 * ours, a form must carry the token that only our own pages know and must not come from another
 * origin, and parts of pages are not handed to other sites. Other devices must show the key.
 *
 * <p>Our pages tell their origin with their forms. {@code Origin: null} comes from pages that hide
 * theirs; it is taken only where the browser itself says that the page is ours ({@code
 * Sec-Fetch-Site}). Who is refused here is told one sentence and nothing else: no path, no token.
 */
final class Guard {
  static final String TOKEN_FIELD = "token";
  private static final String VISITOR = "[A-Za-z0-9_-]{22}";
  private static final String FROM = "Sec-Fetch-Site";

  /** How long a browser keeps its cookie (s): thirty days. */
  private static final int KEPT_S = 2_592_000;

  private final Set<String> hosts;
  private final CsrfFields seal;
  private final String cookie;
  private final Optional<OneTimeKey> key;

  /**
   * A guard.
   *
   * @param hosts the Host headers that mean this server, in lower case with the port
   * @param port the port; cookies of one machine's servers are told apart by it
   * @param key the key for other devices; empty where none are let in
   */
  Guard(Set<String> hosts, int port, CsrfFields seal, Optional<OneTimeKey> key) {
    this.hosts = Set.copyOf(hosts);
    this.seal = seal;
    this.cookie = "starchfilm-" + port;
    this.key = key;
  }

  /**
   * Who was let in.
   *
   * @param redeemed true where a key was shown, and no page is due yet
   */
  record Admission(String visitor, Optional<String> setCookie, boolean redeemed) {}

  /**
   * Lets a request in or refuses it.
   *
   * @param exchange the request, its body not read yet
   */
  Admission admit(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    List<String> host = headers.getOrDefault("Host", List.of());
    if (host.size() != 1 || !hosts.contains(host.get(0).toLowerCase(Locale.ROOT))) {
      throw new HttpError(
          421,
          "These pages do not answer to that name. Use the address printed where"
              + " the program was started.");
    }
    if (isOtherSite(headers) && !"navigate".equals(headers.getFirst("Sec-Fetch-Mode"))) {
      throw new HttpError(403, "Another site may not use these pages.");
    }
    if (exchange.getRemoteAddress().getAddress().isLoopbackAddress()) {
      return known(exchange)
          .filter(visitor -> visitor.matches(VISITOR))
          .findFirst()
          .map(visitor -> new Admission(visitor, Optional.empty(), false))
          .orElseGet(
              () -> {
                String visitor = Secret.ofMachine();
                String kept = "; SameSite=Lax; Max-Age=" + KEPT_S;
                return new Admission(visitor, Optional.of(cookie(visitor) + kept), false);
              });
    }
    return admitDevice(exchange);
  }

  /** Refuses a form from another origin. */
  void requireOwnOrigin(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String origin = headers.getFirst("Origin");
    boolean hidden = "null".equals(origin) && "same-origin".equals(headers.getFirst(FROM));
    boolean foreign = origin != null && !hidden && !isOwn(origin);
    if (foreign || isOtherSite(headers)) {
      throw new HttpError(403, "Another site tried to change these trials; nothing was changed.");
    }
  }

  /** Refuses a form that does not carry the token of the visitor being answered. */
  void requireToken(Fields posted) {
    if (!Secret.matches(seal.token(), posted.text(TOKEN_FIELD))) {
      throw new HttpError(
          403,
          "This form was opened before the program was restarted, comes from"
              + " another site, or from a browser without cookies; nothing was changed."
              + " Open the page again and send the form from there.");
    }
  }

  private boolean isOwn(String origin) {
    String lower = origin.toLowerCase(Locale.ROOT);
    return lower.startsWith("http://") && hosts.contains(lower.substring("http://".length()));
  }

  /** Browsers name the site a request comes from where the connection is trusted, as here. */
  private static boolean isOtherSite(Headers headers) {
    String site = headers.getFirst(FROM);
    return "cross-site".equals(site) || "same-site".equals(site);
  }

  private Admission admitDevice(HttpExchange exchange) {
    if (key.isEmpty()) {
      throw new HttpError(403, "These pages are not shared.");
    }
    Optional<String> device = known(exchange).filter(key.get()::knows).findFirst();
    if (device.isPresent()) {
      return new Admission(device.get(), Optional.empty(), false);
    }
    String query = Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse("");
    String let =
        key.get()
            .redeem(Fields.parse(query).text("key"))
            .orElseThrow(
                () ->
                    new HttpError(
                        401,
                        "These pages need a key. Open the address printed where the program"
                            + " was started; each key works once."));
    return new Admission(let, Optional.of(cookie(let) + "; SameSite=Strict"), true);
  }

  private String cookie(String visitor) {
    return cookie + "=" + visitor + "; HttpOnly; Path=/";
  }

  /** What the visitor's cookies of this server hold. */
  private java.util.stream.Stream<String> known(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> java.util.Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(sent -> sent.startsWith(cookie + "="))
        .map(sent -> sent.substring(cookie.length() + 1));
  }
}
