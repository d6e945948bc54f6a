package starchfilm.web;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import starchfilm.web.http.Fingerprint;
import starchfilm.web.http.Response;

/** Pages that stand alone and bring their style inside; only that very style is let through. */
final class Documents {
  private Documents() {}

  /**
   * A document as an answer.
   *
   * @param html the document, with one style in its head
   */
  static Response page(String html) {
    byte[] style = style(html).getBytes(StandardCharsets.UTF_8);
    String hash = Base64.getEncoder().encodeToString(Fingerprint.of(List.of(style)));
    return Response.page(html)
        .with(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'sha256-"
                + hash
                + "'; img-src data:; form-action 'none'; base-uri 'none'; frame-ancestors 'none'");
  }

  /** What stands in the first style of a document. */
  static String style(String html) {
    int open = html.indexOf('>', html.indexOf("<style")) + 1;
    return html.substring(open, html.indexOf("</style>"));
  }
}
