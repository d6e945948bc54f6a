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
 * <p>Our pages send no referrer, therefore browsers say {@code Origin: null} with their forms
 * (Fetch standard, "append a request Origin header"); such a form must at least not be marked as
 * coming from another site, and the token decides.
 */
final class Guard {
  static final String TOKEN_FIELD = "token";
  private static final String COOKIE = "starchfilm-device";

  private final Set<String> hosts;
  private final String token;
  private final Optional<OneTimeKey> key;

  /**
   * A guard.
   *
   * @param hosts the Host headers that mean this server, in lower case with the port
   * @param token what every form of ours carries
   * @param key the key for other devices; empty where none are let in
   */
  Guard(Set<String> hosts, String token, Optional<OneTimeKey> key) {
    this.hosts = Set.copyOf(hosts);
    this.token = token;
    this.key = key;
  }

  /**
   * Lets a request in or refuses it.
   *
   * @param exchange the request, its body not read yet
   * @return where a key was shown, what to answer instead of the page
   */
  Optional<Response> admit(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    List<String> host = headers.getOrDefault("Host", List.of());
    if (host.size() != 1 || !hosts.contains(host.get(0).toLowerCase(Locale.ROOT))) {
      throw new HttpError(
          421,
          "This notebook is not known by that name. Use the address printed where it was started.");
    }
    if (isOtherSite(headers) && !"navigate".equals(headers.getFirst("Sec-Fetch-Mode"))) {
      throw new HttpError(403, "Another site may not use this notebook.");
    }
    if (exchange.getRemoteAddress().getAddress().isLoopbackAddress()) {
      return Optional.empty();
    }
    return admitDevice(exchange);
  }

  /**
   * Refuses a form from another origin.
   *
   * @param exchange the request
   */
  void requireOwnOrigin(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String origin = headers.getFirst("Origin");
    boolean foreign = origin != null && !origin.equals("null") && !isOwn(origin);
    if (foreign || isOtherSite(headers)) {
      throw new HttpError(403, "Another site tried to change this notebook; nothing was changed.");
    }
  }

  /**
   * Refuses a form that does not carry the token.
   *
   * @param posted the form's fields
   */
  void requireToken(Fields posted) {
    if (!Secret.matches(token, posted.text(TOKEN_FIELD))) {
      throw new HttpError(
          403,
          "This form comes from before the program was started anew, or from elsewhere; nothing was"
              + " changed. Open the page again and send the form from there.");
    }
  }

  private boolean isOwn(String origin) {
    String lower = origin.toLowerCase(Locale.ROOT);
    return lower.startsWith("http://") && hosts.contains(lower.substring("http://".length()));
  }

  /** Browsers name the site a request comes from where the connection is trusted, as here. */
  private static boolean isOtherSite(Headers headers) {
    String site = headers.getFirst("Sec-Fetch-Site");
    return "cross-site".equals(site) || "same-site".equals(site);
  }

  private Optional<Response> admitDevice(HttpExchange exchange) {
    if (key.isEmpty()) {
      throw new HttpError(403, "This notebook is not shared.");
    }
    if (cookies(exchange).anyMatch(key.get()::knows)) {
      return Optional.empty();
    }
    String query = Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse("");
    Optional<String> device = key.get().redeem(Fields.parse(query).text("key"));
    return Optional.of(
        Response.seeOther("/")
            .with(
                "Set-Cookie",
                COOKIE
                    + "="
                    + device.orElseThrow(
                        () ->
                            new HttpError(
                                401,
                                "This notebook lets in no one without its key. Open the address"
                                    + " printed where it was started; each key works once."))
                    + "; HttpOnly; SameSite=Strict; Path=/"));
  }

  private static java.util.stream.Stream<String> cookies(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> java.util.Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(cookie -> cookie.startsWith(COOKIE + "="))
        .map(cookie -> cookie.substring(COOKIE.length() + 1));
  }
}
