package starchfilm.web.http;

import java.util.Optional;

/** What the reader sees instead of a page. */
public interface ErrorPages {
  /**
   * A page that says why.
   *
   * @param refusal what was refused and why
   * @param partial true where a script asked for a part of a page
   * @return a response with the refusal's status
   */
  Response page(HttpError refusal, boolean partial);

  /**
   * What the reader is told about a request that was not carried out.
   *
   * @param why what its handler threw
   * @return empty where the program itself failed
   */
  Optional<HttpError> refusal(Throwable why);
}
