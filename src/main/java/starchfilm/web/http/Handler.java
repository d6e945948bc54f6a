package starchfilm.web.http;

/** Answers one kind of request. */
@FunctionalInterface
public interface Handler {
  /**
   * Answers a request.
   *
   * @param request what was asked for
   * @return what goes back
   * @throws HttpError where it is not carried out
   * @throws Exception where it is not either, for a reason that the site has words for
   */
  Response to(Request request) throws Exception;
}
