package starchfilm.web.http;

import java.util.List;
import java.util.Locale;

/**
 * What a browser asked for, once the guard has let it through.
 *
 * @param path the path, such as {@code /plates}
 * @param query what the address says after its question mark
 * @param posted fields of a form that was sent; none for a page that is only read
 * @param files files sent with the form
 * @param locale the language and region the reader set in the browser, for dates
 * @param partial true where a script asks for a part of the page, not a whole one
 */
public record Request(
    String path,
    Fields query,
    Fields posted,
    List<SentFile> files,
    Locale locale,
    boolean partial) {
  /** Copies the list. */
  public Request {
    files = List.copyOf(files);
  }
}
