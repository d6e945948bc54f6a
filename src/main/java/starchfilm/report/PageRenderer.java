package starchfilm.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Named;
import starchfilm.report.caution.Cautions;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.Glossary;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PotLine;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RecipeWords;

/**
 * Fills the templates of the folder {@code templates}. Beside what it is given, a template may call
 * the classes of words by their names and the units by theirs: {@code PlainWords.list(things)},
 * {@code GRAM.figure(kg)}.
 *
 * <p>Safe to share between threads. Locale and clock have no part in what comes out.
 */
public final class PageRenderer {
  /** What says kinds, figures and forecasts in words; templates call it by its name. */
  private static final List<Class<?>> WORDS =
      List.of(
          Anchor.class,
          Awaited.class,
          Cautions.class,
          DryingFigure.class,
          FailedFilm.class,
          FilmFigure.class,
          Figures.class,
          Glossary.class,
          Headline.class,
          LearntSheet.class,
          LeverTable.class,
          Measured.class,
          MilestoneTable.class,
          Named.class,
          OddityWords.class,
          PlainWords.class,
          PotLine.class,
          PourCalendar.class,
          PourFigure.class,
          RecipeWords.class,
          RiskTable.class,
          Spans.class,
          TrialView.class,
          Weighings.class);

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
    engine.addDialect(new UnbrokenFigures());
  }

  /**
   * Fills one template.
   *
   * @param template its name, without folder and ending
   * @param values what it shows, by name
   * @return the page
   */
  public String render(String template, Map<String, Object> values) {
    return engine.process(template, context(values));
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
    return engine.process(template, Set.of(fragment), context(values));
  }

  private static Context context(Map<String, Object> values) {
    Context context = new Context(Locale.ROOT, values);
    WORDS.forEach(words -> context.setVariable(words.getSimpleName(), words));
    for (ReaderUnit unit : ReaderUnit.values()) {
      context.setVariable(unit.name(), unit);
    }
    return context;
  }
}
