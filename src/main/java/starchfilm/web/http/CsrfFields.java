package starchfilm.web.http;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Objects;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import starchfilm.web.work.LastMade;

/**
 * What marks a form as ours: every form of a page carries both fields, hidden.
 *
 * <p>Each visitor, a browser or another device, has a token of its own, made from what its cookie
 * holds and a secret of this start. Safe to share between threads: each answers one visitor at a
 * time.
 */
public final class CsrfFields {
  private static final String DIGEST = "HmacSHA256";
  private static final int BYTES = 16;

  private final byte[] secret = Secret.ofMachine().getBytes(StandardCharsets.UTF_8);

  @SuppressWarnings("ThreadLocalUsage") // one a server, as long-lived as its threads
  private final ThreadLocal<Visitor> visitor = new ThreadLocal<>();

  CsrfFields() {}

  /** Answers a visitor; the pages made meanwhile carry its token. */
  Response serving(Visitor visitor, LastMade.Making<Response, IOException> answer)
      throws IOException {
    this.visitor.set(visitor);
    try {
      return answer.make();
    } finally {
      this.visitor.remove();
    }
  }

  /**
   * The token that only pages of this start know, and only this visitor's.
   *
   * @return value of the field {@code token}
   */
  public String token() {
    try {
      Mac mac = Mac.getInstance(DIGEST);
      mac.init(new SecretKeySpec(secret, DIGEST));
      byte[] digest = mac.doFinal(visitor().secret().getBytes(StandardCharsets.UTF_8));
      return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(digest, BYTES));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has " + DIGEST, e);
    }
  }

  /**
   * Whom the page is made for.
   *
   * @return the visitor being answered
   */
  public Visitor visitor() {
    return Objects.requireNonNull(visitor.get(), "a form is made while no visitor is answered");
  }

  /**
   * A number for one form, so that it is carried out once.
   *
   * @return value of the field {@code form}, new with every call
   */
  public String form() {
    return Secret.ofMachine();
  }
}
