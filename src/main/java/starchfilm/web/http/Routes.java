package starchfilm.web.http;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Which path is answered by what; a path counts only whole. Immutable once built. */
public final class Routes {
  private final Map<String, Map<String, Handler>> byPath;

  private Routes(Map<String, Map<String, Handler>> byPath) {
    this.byPath = byPath;
  }

  /**
   * Starts a table.
   *
   * @return an empty one
   */
  public static Table table() {
    return new Table();
  }

  /** A table of routes being written. */
  public static final class Table {
    private final Map<String, Map<String, Handler>> byPath = new LinkedHashMap<>();

    private Table() {}

    /**
     * A page that is read; it changes nothing.
     *
     * @param path the whole path
     * @param answer what answers
     * @return this table
     */
    public Table read(String path, Handler answer) {
      return put("GET", path, answer);
    }

    /**
     * A form that is sent and changes something.
     *
     * @param path the whole path
     * @param answer what answers
     * @return this table
     */
    public Table send(String path, Handler answer) {
      return put("POST", path, answer);
    }

    private Table put(String method, String path, Handler answer) {
      if (byPath.computeIfAbsent(path, p -> new TreeMap<>()).put(method, answer) != null) {
        throw new IllegalStateException(method + " " + path + " is answered twice");
      }
      return this;
    }

    /**
     * Closes the table.
     *
     * @return the routes
     */
    public Routes done() {
      Map<String, Map<String, Handler>> copy = new LinkedHashMap<>();
      byPath.forEach((path, answers) -> copy.put(path, Map.copyOf(answers)));
      return new Routes(copy);
    }
  }

  Handler find(String method, String path) {
    Map<String, Handler> answers = byPath.get(path);
    if (answers == null) {
      throw HttpError.notFound(
          "There is no page of this name. The links at the top of every page"
              + " lead to all of them.");
    }
    Handler answer = answers.get(method.equals("HEAD") ? "GET" : method);
    if (answer == null) {
      throw new HttpError(
          405,
          method.toUpperCase(Locale.ROOT).equals("GET")
              ? "This address only accepts a form. Open the page and send the form" + " from there."
              : "This page accepts no form.");
    }
    return answer;
  }
}
