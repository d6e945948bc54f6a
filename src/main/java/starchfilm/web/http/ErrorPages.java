package starchfilm.web.http;

/** What the reader sees instead of a page. */
@FunctionalInterface
public interface ErrorPages {
  /**
   * A page that says why.
   *
   * @param refusal what was refused and why
   * @param partial true where a script asked for a part of a page
   * @return a response with the refusal's status
   */
  Response page(HttpError refusal, boolean partial);
}
