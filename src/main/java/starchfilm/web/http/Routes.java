package starchfilm.web.http;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Which path is answered by what; a path counts only whole. Written before anything is served. */
public final class Routes {
  private final Map<String, Map<String, Handler>> byPath = new HashMap<>();

  /**
   * A page that is read; it changes nothing.
   *
   * @param path the whole path
   * @param answer what answers
   * @return these routes
   */
  public Routes read(String path, Handler answer) {
    return put("GET", path, answer);
  }

  /**
   * A form that is sent and changes something.
   *
   * @param path the whole path
   * @param answer what answers
   * @return these routes
   */
  public Routes send(String path, Handler answer) {
    return put("POST", path, answer);
  }

  private Routes put(String method, String path, Handler answer) {
    if (byPath.computeIfAbsent(path, p -> new HashMap<>()).put(method, answer) != null) {
      throw new IllegalStateException(method + " " + path + " is answered twice");
    }
    return this;
  }

  Handler find(String method, String path) {
    Map<String, Handler> answers = byPath.get(path);
    if (answers == null) {
      throw HttpError.notFound(
          "There is no page of this name. The links at the top of every page lead to all of them.");
    }
    Handler answer = answers.get(method.equals("HEAD") ? "GET" : method);
    if (answer == null) {
      throw new HttpError(
          405,
          method.toUpperCase(Locale.ROOT).equals("GET")
              ? "This address only accepts a form. Open the page and send the form from there."
              : "This page accepts no form.");
    }
    return answer;
  }
}
