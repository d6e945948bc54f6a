package starchfilm.web.http;

import java.util.List;

/**
 * What a browser asked for, once the guard has let it through.
 *
 * @param query what the address says after its question mark
 * @param posted fields of a form that was sent; none for a page that is only read
 * @param files files sent with the form
 * @param partial true where a script asks for a part of the page, not a whole one
 */
public record Request(Fields query, Fields posted, List<SentFile> files, boolean partial) {
  /** Copies the list. */
  public Request {
    files = List.copyOf(files);
  }
}
