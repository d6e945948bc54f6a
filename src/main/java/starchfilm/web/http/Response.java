package starchfilm.web.http;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What goes back to the browser.
 *
 * @param headers headers beside those every answer has
 * @param body the content; may be empty
 */
@SuppressWarnings("ArrayRecordComponent") // written once, never compared
public record Response(int status, Map<String, String> headers, byte[] body) {
  private static final String CONTENT_TYPE = "Content-Type";

  /** Copies the headers. */
  public Response {
    headers = Map.copyOf(headers);
  }

  /**
   * A page.
   *
   * @param html the document, or a part of one
   * @return status 200, not to be kept by the browser
   */
  public static Response page(String html) {
    return page(200, html);
  }

  /**
   * A page with another status than 200.
   *
   * @param status HTTP status
   * @param html the document, or a part of one
   * @return the response, not to be kept by the browser
   */
  public static Response page(int status, String html) {
    return new Response(
        status,
        Map.of(CONTENT_TYPE, "text/html; charset=utf-8", "Cache-Control", "no-store"),
        html.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Sends the browser on, so that going back or loading again does not send the form twice.
   *
   * @param address a path on this server, with its query
   * @return status 303
   */
  public static Response seeOther(String address) {
    return new Response(303, Map.of("Location", address, "Cache-Control", "no-store"), new byte[0]);
  }

  /**
   * A file that never changes under its address.
   *
   * @param type its media type
   * @param bytes its content
   * @return status 200, to be kept
   */
  public static Response lasting(String type, byte[] bytes) {
    return new Response(
        200,
        Map.of(CONTENT_TYPE, type, "Cache-Control", "private, max-age=31536000, immutable"),
        bytes);
  }

  /**
   * A file that may change.
   *
   * @param type its media type
   * @param bytes its content
   * @return status 200, not to be kept
   */
  public static Response passing(String type, byte[] bytes) {
    return new Response(200, Map.of(CONTENT_TYPE, type, "Cache-Control", "no-store"), bytes);
  }

  /** The same to be kept as a file of this name. */
  public Response asFile(String name) {
    return with("Content-Disposition", "attachment; filename=\"" + name + "\"");
  }

  /**
   * The same with one more header.
   *
   * @param name the header
   * @param value its value
   * @return the response
   */
  public Response with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Response(status, more, body);
  }
}
