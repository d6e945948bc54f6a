package starchfilm.web.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Where every request comes in: the guard, the routes, the headers of every answer. */
final class RequestHandler implements HttpHandler {
  /**
   * Nothing is loaded from elsewhere, no script or style stands in a page, no other page shows this
   * one in a frame.
   */
  private static final String CONTENT_SECURITY_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final int AT_ONCE = 10_000;

  /** Larger forms than this are read a few at a time, since they are held in memory (bytes). */
  private static final long LARGE_BYTES = 1_000_000;

  private static final int LARGE_AT_ONCE = 2;
  private static final int PATIENCE_S = 20;

  /** What only the owner may do. */
  private static final Set<String> OF_OWNER = Set.of("/stop", Doorstep.PUT_OUT);

  private final Guard guard;
  private final CsrfFields seal;
  private final Site site;
  private final Consumer<Throwable> troubles;
  private final IdempotencyFilter onceOnly = new IdempotencyFilter();
  private final Semaphore underWay = new Semaphore(AT_ONCE);
  private final Semaphore large = new Semaphore(LARGE_AT_ONCE);

  RequestHandler(Guard guard, CsrfFields seal, Site site, Consumer<Throwable> troubles) {
    this.guard = guard;
    this.seal = seal;
    this.site = site;
    this.troubles = troubles;
    site.routes()
        .send(
            Doorstep.LEAVE,
            request -> {
              guard.logOut(seal.visitor().secret());
              return Doorstep.goodbye("This browser is logged out; a new key lets it in again.");
            })
        .send(
            Doorstep.PUT_OUT,
            request -> {
              guard.putOut(seal.visitor().secret(), request.posted().text("browser"));
              return Doorstep.goodbye("What was put out needs a new key now.");
            });
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    // Once closed, no permit comes free: a request that comes in then is dropped unread.
    if (!underWay.tryAcquire()) {
      exchange.close();
      return;
    }
    try (exchange) {
      send(exchange, answer(exchange));
    } finally {
      underWay.release();
    }
  }

  /** Waits until no request is under way, and lets no more in. */
  void close(int patienceS) {
    try {
      underWay.tryAcquire(AT_ONCE, patienceS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Response answer(HttpExchange exchange) throws IOException {
    Guard.Admission let;
    try {
      let = guard.admit(exchange);
    } catch (HttpError refusal) {
      return bare(refusal);
    }
    Response answer =
        let.instead().isPresent()
            ? let.instead().get()
            : seal.serving(guard.visitor(exchange, let.visitor()), () -> answerVisitor(exchange));
    return let.setCookie()
        .filter(cookie -> !answer.headers().getOrDefault("Cache-Control", "").contains("immutable"))
        .map(cookie -> answer.with("Set-Cookie", cookie))
        .orElse(answer);
  }

  private Response answerVisitor(HttpExchange exchange) throws IOException {
    boolean partial = "true".equals(exchange.getRequestHeaders().getFirst("HX-Request"));
    try {
      return carriedOut(exchange, partial);
    } catch (IOException brokenOff) {
      throw brokenOff;
    } catch (Exception | Error e) {
      Optional<HttpError> refusal = site.errors().refusal(e);
      if (refusal.isEmpty()) {
        troubles.accept(e);
      }
      return errorPage(
          refusal.orElseGet(
              () ->
                  new HttpError(
                      500,
                      "The program itself failed here; your files are fine. The reason is"
                          + " printed in the window where the program was started.")),
          partial);
    }
  }

  private Response errorPage(HttpError refusal, boolean partial) {
    if (refusal.isToStranger()) {
      return bare(refusal);
    }
    try {
      return site.errors().page(refusal, partial);
    } catch (RuntimeException e) {
      // Then the sentence alone has to do.
      troubles.accept(e);
      return bare(refusal);
    }
  }

  /** A sentence and nothing else: for those who may not see a page of ours. */
  private static Response bare(HttpError refusal) {
    return new Response(
        refusal.status(),
        Map.of("Content-Type", "text/plain; charset=utf-8", "Cache-Control", "no-store"),
        refusal.sentence().getBytes(StandardCharsets.UTF_8));
  }

  private Response carriedOut(HttpExchange exchange, boolean partial) throws Exception {
    String path = exchange.getRequestURI().getPath();
    Handler answer = site.routes().find(exchange.getRequestMethod(), path);
    Fields query = Guard.query(exchange);
    if (!exchange.getRequestMethod().equals("POST")) {
      return answer.to(new Request(query, Fields.NONE, List.of(), partial));
    }
    if (OF_OWNER.contains(path)) {
      guard.requireOwner(exchange);
    }
    guard.requireOwnOrigin(exchange);
    boolean isLarge = Body.declaredLength(exchange).orElse(LARGE_BYTES) >= LARGE_BYTES;
    if (isLarge && !large.tryAcquire(PATIENCE_S, TimeUnit.SECONDS)) {
      throw new HttpError(
          503, "Other large forms are being read; nothing was saved. Send it again in a minute.");
    }
    try {
      Body body = Body.read(exchange, guard::requireToken);
      Request request = new Request(query, body.fields(), body.files(), partial);
      return onceOnly.answer(body, () -> answer.to(request));
    } finally {
      if (isLarge) {
        large.release();
      }
    }
  }

  private static void send(HttpExchange exchange, Response response) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Security-Policy", CONTENT_SECURITY_POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    response.headers().forEach(headers::set);
    boolean withBody = response.body().length > 0 && !exchange.getRequestMethod().equals("HEAD");
    exchange.sendResponseHeaders(response.status(), withBody ? response.body().length : -1);
    if (withBody) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(response.body());
      }
    }
  }
}
