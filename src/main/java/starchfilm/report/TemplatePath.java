package starchfilm.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.thymeleaf.exceptions.TemplateProcessingException;

/**
 * What a template may write between <code>${</code> and <code>}</code>: a variable or a tool of the
 * library, then accessors by name, such as <code>trial.film.rows</code>, <code>form.text('feel')
 * </code>, <code>fields['name']</code> or <code>#numbers.sequence(1, 5)</code>. Operators stand
 * outside the braces, where the library reads them.
 *
 * @param head the name of a variable, or of a tool with its <code>#</code>
 * @param steps the accessors, in order
 */
record TemplatePath(String head, List<PathStep> steps) {
  private static final Pattern TOKEN =
      Pattern.compile("\\s*(#?[A-Za-z][A-Za-z0-9]*|'[^']*'|[0-9]+|[.,()\\[\\]])\\s*");

  /**
   * One accessor.
   *
   * @param arguments texts, whole numbers and paths
   */
  record PathStep(String name, List<Object> arguments) {}

  /**
   * Reads a path.
   *
   * @return the path
   */
  static TemplatePath of(String expression) {
    Deque<String> tokens = new ArrayDeque<>();
    Matcher matcher = TOKEN.matcher(expression);
    int end = 0;
    while (matcher.find() && matcher.start() == end) {
      tokens.add(matcher.group(1));
      end = matcher.end();
    }
    try {
      TemplatePath path = path(tokens);
      if (tokens.isEmpty() && end == expression.length()) {
        return path;
      }
    } catch (NoSuchElementException none) {
      // It ends too early, or has another word or sign where a path goes on.
    }
    throw new TemplateProcessingException(
        "\"" + expression + "\" is no path; operators go outside the braces: ${a} == 'b'");
  }

  private static TemplatePath path(Deque<String> tokens) {
    String head = taken(tokens, "#?[A-Za-z].*");
    List<PathStep> steps = new ArrayList<>();
    while (isNext(tokens, "[.\\[]")) {
      if (tokens.pop().equals("[")) {
        steps.add(new PathStep("get", List.of(argument(tokens))));
        taken(tokens, "]");
      } else {
        String name = taken(tokens, "#?[A-Za-z].*");
        steps.add(new PathStep(name, isNext(tokens, "\\(") ? arguments(tokens) : List.of()));
      }
    }
    return new TemplatePath(head, List.copyOf(steps));
  }

  private static List<Object> arguments(Deque<String> tokens) {
    List<Object> arguments = new ArrayList<>();
    taken(tokens, "\\(");
    while (!isNext(tokens, "\\)")) {
      arguments.add(argument(tokens));
      if (!isNext(tokens, "\\)")) {
        taken(tokens, ",");
      }
    }
    taken(tokens, "\\)");
    return List.copyOf(arguments);
  }

  private static Object argument(Deque<String> tokens) {
    if (isNext(tokens, "'.*")) {
      String text = tokens.pop();
      return text.substring(1, text.length() - 1);
    }
    return isNext(tokens, "[0-9]+") ? (Object) Integer.valueOf(tokens.pop()) : path(tokens);
  }

  private static boolean isNext(Deque<String> tokens, String kind) {
    return !tokens.isEmpty() && tokens.getFirst().matches(kind);
  }

  private static String taken(Deque<String> tokens, String kind) {
    if (!isNext(tokens, kind)) {
      throw new NoSuchElementException(kind);
    }
    return tokens.pop();
  }
}
