package starchfilm.web.http;

/** Answers one kind of request. */
@FunctionalInterface
public interface Answer {
  /**
   * Answers a request.
   *
   * @param request what was asked for
   * @return what goes back
   * @throws Refusal where it is not carried out
   */
  Response to(Request request);
}
