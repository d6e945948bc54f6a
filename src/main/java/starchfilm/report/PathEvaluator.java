package starchfilm.report;

import java.lang.invoke.MethodType;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.standard.expression.IStandardVariableExpression;
import org.thymeleaf.standard.expression.IStandardVariableExpressionEvaluator;
import org.thymeleaf.standard.expression.StandardExpressionExecutionContext;
import starchfilm.report.TemplatePath.PathStep;

/**
 * Evaluates the paths of templates by calling the accessors they name; of a class, its static
 * methods. What is there or not is at the end of a path itself or nothing.
 *
 * <p>The library's own evaluator brings two more libraries, and takes its quick way only for bean
 * getters, which records do not have; its slow way costs several times as much as all the rest of a
 * page. Safe to share between threads.
 */
final class PathEvaluator implements IStandardVariableExpressionEvaluator {
  private record Call(Class<?> owner, boolean ofClass, String name, List<Class<?>> arguments) {
    /** A record compares by method handles that are spun when it first does; a list does not. */
    private List<Object> key() {
      return List.of(owner, ofClass, name, arguments);
    }

    /** Whether a method can be called like this. */
    private boolean fits(Method method) {
      List<Class<?>> taken =
          MethodType.methodType(void.class, method.getParameterTypes()).wrap().parameterList();
      return Modifier.isStatic(method.getModifiers()) == ofClass
          && taken.size() == arguments.size()
          && IntStream.range(0, taken.size())
              .allMatch(i -> taken.get(i).isAssignableFrom(arguments.get(i)));
    }
  }

  /** What the platform's collections are asked as. */
  private static final List<Class<?>> HIDDEN =
      List.of(List.class, Collection.class, Map.class, Map.Entry.class);

  private final Map<String, TemplatePath> paths = new ConcurrentHashMap<>();
  private final Map<List<Object>, Method> accessors = new ConcurrentHashMap<>();

  @Override
  public @Nullable Object evaluate(
      IExpressionContext context,
      IStandardVariableExpression expression,
      StandardExpressionExecutionContext how) {
    Object found =
        walk(context, paths.computeIfAbsent(expression.getExpression(), TemplatePath::of));
    return found instanceof Optional<?> perhaps ? perhaps.orElse(null) : found;
  }

  private @Nullable Object walk(IExpressionContext context, TemplatePath path) {
    String head = path.head();
    Object value =
        head.startsWith("#")
            ? context.getExpressionObjects().getObject(head.substring(1))
            : context.getVariable(head);
    for (PathStep step : path.steps()) {
      if (value == null) {
        throw new TemplateProcessingException(
            "nothing to ask for \"" + step.name() + "\" in " + path);
      }
      Object[] arguments = step.arguments().toArray();
      Arrays.setAll(
          arguments,
          i -> arguments[i] instanceof TemplatePath inner ? walk(context, inner) : arguments[i]);
      value = call(value, step.name(), arguments);
    }
    return value;
  }

  private @Nullable Object call(Object owner, String name, Object[] arguments) {
    Class<?>[] taken = new Class<?>[arguments.length];
    Arrays.setAll(taken, i -> arguments[i].getClass());
    Call call = new Call(visible(owner), owner instanceof Class, name, Arrays.asList(taken));
    Method accessor = accessors.computeIfAbsent(call.key(), key -> find(call));
    try {
      return accessor.invoke(owner, arguments);
    } catch (InvocationTargetException thrown) {
      throw new TemplateProcessingException(accessor + " failed", thrown.getCause());
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException("made accessible below", impossible);
    }
  }

  /** The platform's collections hide their classes; what they can do stands in their interfaces. */
  private static Class<?> visible(Object owner) {
    if (owner instanceof Class<?> words) {
      return words;
    }
    for (Class<?> known : HIDDEN) {
      if (known.isInstance(owner)) {
        return known;
      }
    }
    return owner.getClass();
  }

  private static Method find(Call call) {
    String capital =
        call.name().substring(0, 1).toUpperCase(Locale.ROOT) + call.name().substring(1);
    for (String candidate : List.of(call.name(), "get" + capital, "is" + capital)) {
      for (Method method : call.owner().getMethods()) {
        if (method.getName().equals(candidate) && call.fits(method)) {
          // A view may be visible to its own package only; its accessors are public all the same.
          method.setAccessible(true);
          return method;
        }
      }
    }
    throw new TemplateProcessingException(
        call.owner().getSimpleName() + " has no \"" + call.name() + "\"");
  }
}
