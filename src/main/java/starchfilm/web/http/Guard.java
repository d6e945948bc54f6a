package starchfilm.web.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Decides who may ask.
 *
 * <p>A page from elsewhere that is open in the same browser can send requests here, and by a name
 * that it points at this machine it could even read the answers. So the Host header must be one of
 * ours, a form must carry the token that only our own pages know and must not come from another
 * origin, and parts of pages are not handed to other sites. Other devices must show a key, and so
 * must browsers of this machine, which other users may share, unless the owner lets all of them in.
 *
 * <p>Our pages tell their origin with their forms. {@code Origin: null} comes from pages that hide
 * theirs; it is taken only where the browser itself says that the page is ours ({@code
 * Sec-Fetch-Site}). Who is refused here is given one sentence and nothing else: no path, no token.
 */
final class Guard {
  static final String TOKEN_FIELD = "token";
  private static final String VISITOR = "[A-Za-z0-9_-]{22}";
  private static final String FROM = "Sec-Fetch-Site";

  /** How long a browser keeps its cookie (s): thirty days. */
  private static final int KEPT_S = 2_592_000;

  private static final int MOST_KEY_BYTES = 1_000;
  private static final Pattern DEVICE = Pattern.compile("\\(([\\p{Alnum} ;:._/-]{1,60})");

  private final Set<String> hosts;
  private final CsrfFields seal;
  private final String cookie;

  /** The key for other devices; empty where none are let in. */
  private final Optional<OneTimeKey> key;

  /** The key for browsers of this machine; empty where none is needed. */
  private final Optional<OneTimeKey> ownKey;

  /**
   * A guard.
   *
   * @param serving who is let in
   * @param port the port; cookies of one machine's servers are distinguished by it
   */
  Guard(Serving serving, int port, CsrfFields seal) {
    this.hosts = OwnNames.hosts(port, serving.lan());
    this.seal = seal;
    this.cookie = "starchfilm-" + port;
    this.key = serving.lan() ? Optional.of(keys(serving.newKey())) : Optional.empty();
    String address = OwnNames.addresses(port, false).get(0) + "?key=";
    this.ownKey = serving.ownLink().map(to -> keys(made -> to.accept(address + made)));
  }

  private static OneTimeKey keys(Consumer<String> printer) {
    return new OneTimeKey(printer, InstantSource.system());
  }

  /** Shows the key for the first browser of this machine, where one is needed. */
  Optional<String> showOwnKey() {
    return ownKey.map(OneTimeKey::print);
  }

  /** Shows the key for the first other device; each later key is shown as soon as it is made. */
  void showKey() {
    key.ifPresent(OneTimeKey::print);
  }

  /**
   * Who was let in.
   *
   * @param instead what is answered instead of a page, where no page is due yet
   */
  record Admission(String visitor, Optional<String> setCookie, Optional<Response> instead) {
    /** One that is known. */
    static Admission of(String visitor) {
      return new Admission(visitor, Optional.empty(), Optional.empty());
    }
  }

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
    if (isLocal(exchange) && ownKey.isEmpty()) {
      return known(exchange)
          .filter(visitor -> visitor.matches(VISITOR))
          .findFirst()
          .map(Admission::of)
          .orElseGet(
              () -> {
                String visitor = Secret.ofMachine();
                return new Admission(visitor, cookie(visitor, "Lax"), Optional.empty());
              });
    }
    return admitByKey(
        exchange,
        (isLocal(exchange) ? ownKey : key)
            .orElseThrow(() -> new HttpError(403, "These pages are not shared.")));
  }

  /** Refuses a form from another origin. */
  void requireOwnOrigin(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String origin = headers.getFirst("Origin");
    boolean hidden = "null".equals(origin) && "same-origin".equals(headers.getFirst(FROM));
    boolean foreign = origin != null && !hidden && !isOwn(origin);
    if (foreign || isOtherSite(headers)) {
      throw HttpError.toStranger(
          403, "Another site tried to change these trials; nothing was changed.");
    }
  }

  /** Refuses a form that does not carry the token of the visitor being answered. */
  void requireToken(Fields posted) {
    if (!Secret.matches(seal.token(), posted.text(TOKEN_FIELD))) {
      throw HttpError.toStranger(
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

  private Admission admitByKey(HttpExchange exchange, OneTimeKey keys) {
    Optional<String> browser = known(exchange).filter(keys::knows).findFirst();
    if (browser.isPresent()) {
      return Admission.of(browser.get());
    }
    boolean posted =
        exchange.getRequestMethod().equals("POST")
            && exchange.getRequestURI().getPath().equals(Doorstep.ENTER);
    if (posted) {
      Optional<String> let = keys.redeem(shown(exchange), name(exchange));
      if (let.isPresent()) {
        return new Admission(
            let.get(), cookie(let.get(), "Strict"), Optional.of(Doorstep.welcome()));
      }
    } else {
      String given = query(exchange).text("key");
      if (keys.fits(given)) {
        return new Admission("", Optional.empty(), Optional.of(Doorstep.ask(given)));
      }
    }
    throw new HttpError(
        401,
        "These pages need a key. Open the address printed where the program was started; each key"
            + " works once.");
  }

  /** The key in a form, of which no more is read than a key needs. */
  private static String shown(HttpExchange exchange) {
    try {
      byte[] start = exchange.getRequestBody().readNBytes(MOST_KEY_BYTES);
      return Fields.parse(new String(start, StandardCharsets.UTF_8)).text("key");
    } catch (IOException brokenOff) {
      throw new HttpError(400, "The form broke off.");
    }
  }

  /** Refuses whoever is not on this machine. */
  void requireOwner(HttpExchange exchange) {
    if (!isLocal(exchange)) {
      throw new HttpError(403, "Only a browser of the machine that runs the program may do this.");
    }
  }

  /** Lets a visitor out; a new key is needed to come in again. */
  void logOut(String visitor) {
    keys().forEach(keys -> keys.forget(visitor));
  }

  /** Puts out one other browser by its number, or with no number everybody but the visitor. */
  void putOut(String visitor, String number) {
    keys().forEach(keys -> keys.putOut(visitor, number));
  }

  /** What the pages of a visitor show of itself and of others. */
  Visitor visitor(HttpExchange exchange, String secret) {
    boolean owner = isLocal(exchange);
    Stream<SignedIn> others =
        keys()
            .flatMap(keys -> keys.others(secret).stream())
            .filter(other -> owner)
            .sorted(Comparator.comparing(SignedIn::lastSeen).reversed());
    return new Visitor(secret, owner, !owner || ownKey.isPresent(), others.toList());
  }

  private Stream<OneTimeKey> keys() {
    return Stream.of(key, ownKey).flatMap(Optional::stream);
  }

  /** What a browser says of its device in the first brackets, and the address it has. */
  private static String name(HttpExchange exchange) {
    String agent = String.valueOf(exchange.getRequestHeaders().getFirst("User-Agent"));
    Matcher device = DEVICE.matcher(agent);
    return (device.find() ? device.group(1) : "a browser that does not say on what")
        + (isLocal(exchange)
            ? ", on this machine"
            : ", at " + exchange.getRemoteAddress().getAddress().getHostAddress());
  }

  private static boolean isLocal(HttpExchange exchange) {
    return exchange.getRemoteAddress().getAddress().isLoopbackAddress();
  }

  /** What the address says after its question mark. */
  static Fields query(HttpExchange exchange) {
    return Fields.parse(Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse(""));
  }

  private Optional<String> cookie(String visitor, String sameSite) {
    return Optional.of(
        "%s=%s; HttpOnly; Path=/; SameSite=%s; Max-Age=%d"
            .formatted(cookie, visitor, sameSite, KEPT_S));
  }

  /** What the visitor's cookies of this server hold. */
  private Stream<String> known(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Stream.of(line.split(";", -1)))
        .map(String::strip)
        .filter(sent -> sent.startsWith(cookie + "="))
        .map(sent -> sent.substring(cookie.length() + 1));
  }
}
