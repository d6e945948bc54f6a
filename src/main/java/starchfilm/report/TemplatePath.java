package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
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
record TemplatePath(String head, List<Step> steps) {
  private static final Pattern TOKEN =
      Pattern.compile("\\s*(#?[A-Za-z][A-Za-z0-9]*|'[^']*'|[0-9]+|[.,()\\[\\]])\\s*");

  /**
   * One accessor.
   *
   * @param arguments texts, whole numbers and paths
   */
  record Step(String name, List<Object> arguments) {}

  /**
   * Reads a path.
   *
   * @return the path
   */
  static TemplatePath of(String expression) {
    Reader reader = new Reader(expression);
    TemplatePath path = reader.path();
    if (!reader.token.isEmpty()) {
      throw reader.fault();
    }
    return path;
  }

  private static final class Reader {
    private final String expression;
    private final Matcher tokens;

    /** The one to be read next; empty at the end. */
    private String token = "";

    private Reader(String expression) {
      this.expression = expression;
      tokens = TOKEN.matcher(expression);
      next();
    }

    private TemplatePath path() {
      String head = name();
      List<Step> steps = new ArrayList<>();
      while (token.equals(".") || token.equals("[")) {
        if (next().equals("[")) {
          steps.add(new Step("get", List.of(argument())));
          skip("]");
        } else {
          steps.add(new Step(name(), token.equals("(") ? arguments() : List.of()));
        }
      }
      return new TemplatePath(head, List.copyOf(steps));
    }

    private List<Object> arguments() {
      List<Object> arguments = new ArrayList<>();
      skip("(");
      while (!token.equals(")")) {
        arguments.add(argument());
        if (!token.equals(")")) {
          skip(",");
        }
      }
      skip(")");
      return List.copyOf(arguments);
    }

    private Object argument() {
      if (token.startsWith("'")) {
        String text = next();
        return text.substring(1, text.length() - 1);
      }
      return token.matches("[0-9]+") ? (Object) Integer.valueOf(next()) : path();
    }

    private String name() {
      if (!token.matches("#?[A-Za-z].*")) {
        throw fault();
      }
      return next();
    }

    private void skip(String expected) {
      if (!next().equals(expected)) {
        throw fault();
      }
    }

    /** Goes on to the next token, and returns the one it was at. */
    private String next() {
      String read = token;
      boolean more = tokens.lookingAt();
      if (!more && tokens.regionStart() < expression.length()) {
        throw fault();
      }
      token = more ? tokens.group(1) : "";
      if (more) {
        tokens.region(tokens.end(), expression.length());
      }
      return read;
    }

    private TemplateProcessingException fault() {
      return new TemplateProcessingException(
          "\"" + expression + "\" is no path; operators go outside the braces: ${a} == 'b'");
    }
  }
}
