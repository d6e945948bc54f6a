package starchfilm.report;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/**
 * Fills the templates of the folder {@code templates}.
 *
 * <p>Safe to share between threads. Locale and clock have no part in what comes out.
 */
public final class PageRenderer {
  private final TemplateEngine engine = new TemplateEngine();

  /** Makes a renderer that reads the templates packed with the program. */
  public PageRenderer() {
    ClassLoaderTemplateResolver resolver =
        new ClassLoaderTemplateResolver(PageRenderer.class.getClassLoader());
    resolver.setPrefix("templates/");
    resolver.setSuffix(".html");
    resolver.setTemplateMode(TemplateMode.HTML);
    resolver.setCharacterEncoding("UTF-8");
    engine.setTemplateResolver(resolver);
    StandardDialect dialect = new StandardDialect();
    dialect.setVariableExpressionEvaluator(new PathEvaluator());
    engine.setDialect(dialect);
  }

  /**
   * Fills one template.
   *
   * @param template its name, without folder and ending
   * @param values what it shows, by name
   * @return the page
   */
  public String render(String template, Map<String, Object> values) {
    return engine.process(template, new Context(Locale.ROOT, values));
  }

  /**
   * Fills one fragment of a template.
   *
   * @param template its name, without folder and ending
   * @param fragment the fragment's name
   * @param values what it shows, by name
   * @return a part of a page
   */
  public String render(String template, String fragment, Map<String, Object> values) {
    return engine.process(template, Set.of(fragment), new Context(Locale.ROOT, values));
  }
}
