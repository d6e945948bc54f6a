package starchfilm.web.http;

/**
 * What marks a form as ours: every form of a page carries both fields, hidden.
 *
 * <p>Safe to share between threads.
 */
public final class CsrfFields {
  private final String token;

  CsrfFields(String token) {
    this.token = token;
  }

  /**
   * The token that only pages of this start know.
   *
   * @return value of the field {@code token}
   */
  public String token() {
    return token;
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
