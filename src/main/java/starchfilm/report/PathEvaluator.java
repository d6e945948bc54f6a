package starchfilm.report;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.standard.expression.IStandardVariableExpression;
import org.thymeleaf.standard.expression.IStandardVariableExpressionEvaluator;
import org.thymeleaf.standard.expression.OGNLVariableExpressionEvaluator;
import org.thymeleaf.standard.expression.StandardExpressionExecutionContext;

/**
 * Evaluates the plain paths of templates, such as <code>trial.film.rows</code>, by calling the
 * accessors they name; anything else is left to the library's own evaluator.
 *
 * <p>The library takes its quick way only for bean getters, which records do not have, and its slow
 * way costs several times as much as all the rest of a page. Safe to share between threads.
 */
final class PathEvaluator implements IStandardVariableExpressionEvaluator {
  private static final Pattern PATH =
      Pattern.compile("[A-Za-z][A-Za-z0-9]*(\\.[A-Za-z][A-Za-z0-9]*(\\(\\))?)*");

  /** Words that mean something else than a name to the library's evaluator. */
  private static final Pattern LITERAL = Pattern.compile("true|false|null|this");

  private final IStandardVariableExpressionEvaluator otherwise =
      new OGNLVariableExpressionEvaluator(true);
  private final Map<String, Optional<String[]>> paths = new ConcurrentHashMap<>();
  private final Map<Class<?>, Map<String, Method>> accessors = new ConcurrentHashMap<>();

  @Override
  public @Nullable Object evaluate(
      IExpressionContext context,
      IStandardVariableExpression expression,
      StandardExpressionExecutionContext how) {
    Optional<String[]> path =
        paths.computeIfAbsent(expression.getExpression(), PathEvaluator::split);
    if (path.isEmpty() || !context.containsVariable(path.get()[0])) {
      return otherwise.evaluate(context, expression, how);
    }
    Object value = context.getVariable(path.get()[0]);
    for (int i = 1; i < path.get().length; i++) {
      if (value == null || !knows(value, path.get()[i])) {
        return otherwise.evaluate(context, expression, how);
      }
      value = step(value, path.get()[i]);
    }
    return value;
  }

  private static Optional<String[]> split(String expression) {
    return PATH.matcher(expression).matches() && !LITERAL.matcher(expression).matches()
        ? Optional.of(expression.replace("()", "").split("\\.", -1))
        : Optional.empty();
  }

  /** Classes of the platform do not let themselves be reflected on; three of them are met often. */
  private static boolean knows(Object owner, String name) {
    return switch (name) {
      case "size", "empty", "isEmpty", "present", "isPresent", "get" ->
          owner instanceof Collection
              || owner instanceof Optional
              || owner instanceof String
              || !isOfPlatform(owner);
      default -> !isOfPlatform(owner);
    };
  }

  private static boolean isOfPlatform(Object owner) {
    return owner.getClass().getName().startsWith("java.");
  }

  private @Nullable Object step(Object owner, String name) {
    if (owner instanceof Collection<?> collection) {
      return name.equals("size") ? collection.size() : collection.isEmpty();
    }
    if (owner instanceof String text) {
      return text.isEmpty();
    }
    if (owner instanceof Optional<?> optional) {
      return switch (name) {
        case "present", "isPresent" -> optional.isPresent();
        case "get" -> optional.orElseThrow();
        default -> optional.isEmpty();
      };
    }
    return call(accessor(owner.getClass(), name), owner);
  }

  private Method accessor(Class<?> type, String name) {
    return accessors
        .computeIfAbsent(type, unknown -> new ConcurrentHashMap<>())
        .computeIfAbsent(name, unknown -> find(type, name));
  }

  private static Method find(Class<?> type, String name) {
    String capital = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    for (String candidate : List.of(name, "get" + capital, "is" + capital)) {
      for (Method method : type.getMethods()) {
        if (method.getParameterCount() == 0 && method.getName().equals(candidate)) {
          // A view may be visible to its own package only; its accessors are public all the same.
          method.setAccessible(true);
          return method;
        }
      }
    }
    throw new TemplateProcessingException(type.getSimpleName() + " has no \"" + name + "\"");
  }

  private static @Nullable Object call(Method accessor, Object owner) {
    try {
      return accessor.invoke(owner);
    } catch (InvocationTargetException thrown) {
      throw new TemplateProcessingException(accessor + " failed", thrown.getCause());
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException("made accessible above", impossible);
    }
  }
}
