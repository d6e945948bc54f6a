package starchfilm.web.http;

/** What somebody who is not let in yet may see: a button that shows the key, and a way on. */
final class Doorstep {
  /** Where a key is shown, by a form alone: links, previews and HEAD never use one up. */
  static final String ENTER = "/enter";

  /** Where a visitor logs out. */
  static final String LEAVE = "/leave";

  /** Where the owner puts others out. */
  static final String PUT_OUT = "/put-out";

  private static final String PAGE =
      "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"UTF-8\"><meta name=\"viewport\""
          + " content=\"width=device-width\">%s<title>starchfilm</title></head><body>%s</body></html>";

  private Doorstep() {}

  /** A page with a button. The key fits, so it holds nothing that would have to be escaped. */
  static Response ask(String key) {
    return Response.page(
        PAGE.formatted(
            "",
            """
            <form method="post" action="%s"><input type="hidden" name="key" value="%s">\
            <button type="submit">Open the trials in this browser</button></form>"""
                .formatted(ENTER, key)));
  }

  /**
   * A page that goes on by itself. A redirect would not do: after a click elsewhere a browser holds
   * the new cookie back until a page of ours leads on.
   */
  static Response welcome() {
    return Response.page(
        PAGE.formatted(
            "<meta http-equiv=\"refresh\" content=\"0;url=/\">",
            "<p><a href=\"/\">Open the trials</a></p>"));
  }

  static Response goodbye(String sentence) {
    return Response.page(
        PAGE.formatted("", "<p>" + sentence + "</p><p><a href=\"/\">To the trials</a></p>"));
  }
}
