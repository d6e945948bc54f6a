package starchfilm.web.http;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Carries out a form once, however often the button was pressed: the same form with the same
 * content gets the first answer again.
 *
 * <p>Each form carries a number of its own, so two equal entries from two forms both count.
 */
final class IdempotencyFilter {
  static final String FORM_FIELD = "form";
  private static final int REMEMBERED = 500;
  private static final int SEE_OTHER = 303;

  private final Map<String, CompletableFuture<Response>> answers = new LinkedHashMap<>();

  /** Carries out a form, or waits for the one that is being carried out. */
  Response answer(Body body, Callable<Response> work) throws Exception {
    if (body.fields().text(FORM_FIELD).isEmpty()) {
      return work.call();
    }
    String form = fingerprint(body);
    CompletableFuture<Response> mine = new CompletableFuture<>();
    CompletableFuture<Response> first = first(form, mine);
    if (first != mine) {
      return answerOf(first);
    }
    try {
      Response response = work.call();
      // Only what changed something sends the browser on; anything else may be sent again.
      if (response.status() != SEE_OTHER) {
        forget(form, mine);
      }
      mine.complete(response);
      return response;
    } catch (Exception | Error e) {
      forget(form, mine);
      mine.completeExceptionally(e);
      throw e;
    }
  }

  private static Response answerOf(CompletableFuture<Response> first) throws Exception {
    try {
      return first.join();
    } catch (CompletionException e) {
      throw e.getCause() instanceof Exception refusal ? refusal : e;
    }
  }

  private synchronized CompletableFuture<Response> first(
      String form, CompletableFuture<Response> mine) {
    CompletableFuture<Response> earlier = answers.putIfAbsent(form, mine);
    if (answers.size() > REMEMBERED) {
      answers.remove(answers.keySet().iterator().next());
    }
    return earlier == null ? mine : earlier;
  }

  private synchronized void forget(String form, CompletableFuture<Response> mine) {
    answers.remove(form, mine);
  }

  private static String fingerprint(Body body) {
    List<byte[]> parts = new ArrayList<>();
    parts.add(body.fields().toString().getBytes(StandardCharsets.UTF_8));
    for (SentFile file : body.files()) {
      parts.add(file.name().getBytes(StandardCharsets.UTF_8));
      parts.add(file.bytes());
    }
    return Base64.getEncoder().encodeToString(Fingerprint.of(parts));
  }
}
