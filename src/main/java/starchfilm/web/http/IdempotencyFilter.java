package starchfilm.web.http;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import starchfilm.web.work.LastMade;

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

  private final LastMade<String, Response> answers = new LastMade<>(REMEMBERED);

  /** Carries out a form, or waits for the one that is being carried out. */
  Response answer(Body body, LastMade.Making<Response, Exception> work) throws Exception {
    // Only what changed something sends the browser on; anything else may be sent again.
    return body.fields().text(FORM_FIELD).isEmpty()
        ? work.make()
        : answers.of(fingerprint(body), work, response -> response.status() == SEE_OTHER);
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
