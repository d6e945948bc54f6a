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
  private static final String STOP = "/stop";

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
    } catch (BrokenOff e) {
      throw new IOException("the sender broke off", e.getCause());
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

  /** The sender broke off; there is nobody to answer. */
  private static final class BrokenOff extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BrokenOff(IOException cause) {
      super(cause);
    }
  }

  private Response answer(HttpExchange exchange) {
    boolean partial = "true".equals(exchange.getRequestHeaders().getFirst("HX-Request"));
    Guard.Admission visitor;
    try {
      visitor = guard.admit(exchange);
    } catch (HttpError refusal) {
      return bare(refusal);
    }
    Response answer =
        visitor
            .instead()
            .orElseGet(
                () ->
                    seal.serving(
                        guard.visitor(exchange, visitor.visitor()),
                        () -> answerVisitor(exchange, visitor.visitor(), partial)));
    return visitor
        .setCookie()
        .filter(cookie -> !answer.headers().getOrDefault("Cache-Control", "").contains("immutable"))
        .map(cookie -> answer.with("Set-Cookie", cookie))
        .orElse(answer);
  }

  private Response answerVisitor(HttpExchange exchange, String visitor, boolean partial) {
    try {
      return carriedOut(exchange, visitor, partial);
    } catch (IOException e) {
      throw new BrokenOff(e);
    } catch (Exception | Error e) {
      Optional<HttpError> refusal =
          e instanceof Exception thrown ? site.errors().refusal(thrown) : Optional.empty();
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

  private Response carriedOut(HttpExchange exchange, String visitor, boolean partial)
      throws Exception {
    String method = exchange.getRequestMethod();
    Handler answer = atTheDoor(exchange, visitor);
    Fields query =
        Fields.parse(Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse(""));
    if (!method.equals("POST")) {
      return answer.to(request(exchange, query, new Body(Fields.NONE, List.of()), partial));
    }
    guard.requireOwnOrigin(exchange);
    boolean isLarge = Body.declaredLength(exchange).orElse(LARGE_BYTES) >= LARGE_BYTES;
    if (isLarge && !acquired(large)) {
      throw new HttpError(
          503, "Other large forms are being read; nothing was saved. Send it again in a minute.");
    }
    try {
      Body body = Body.read(exchange, guard::requireToken);
      return onceOnly.answer(body, () -> answer.to(request(exchange, query, body, partial)));
    } finally {
      if (isLarge) {
        large.release();
      }
    }
  }

  /** Leaving is answered here, and only the owner stops the program or puts others out. */
  private Handler atTheDoor(HttpExchange exchange, String visitor) {
    String method = exchange.getRequestMethod();
    String path = exchange.getRequestURI().getPath();
    if (!method.equals("POST")) {
      return site.routes().find(method, path);
    }
    return switch (path) {
      case Doorstep.LEAVE ->
          request -> {
            guard.logOut(visitor);
            return Doorstep.goodbye("This browser is logged out; a new key lets it in again.");
          };
      case Doorstep.PUT_OUT -> {
        guard.requireOwner(exchange);
        yield request -> {
          guard.putOut(visitor, request.posted().text("browser"));
          return Doorstep.goodbye("What was put out needs a new key now.");
        };
      }
      case STOP -> {
        guard.requireOwner(exchange);
        yield site.routes().find(method, path);
      }
      default -> site.routes().find(method, path);
    };
  }

  private static boolean acquired(Semaphore permits) {
    try {
      return permits.tryAcquire(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static Request request(HttpExchange exchange, Fields query, Body body, boolean partial) {
    return new Request(
        exchange.getRequestURI().getPath(), query, body.fields(), body.files(), partial);
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
