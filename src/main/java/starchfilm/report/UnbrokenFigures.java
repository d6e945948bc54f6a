package starchfilm.report;

import java.util.Set;
import java.util.regex.Pattern;
import org.thymeleaf.dialect.AbstractDialect;
import org.thymeleaf.dialect.IPostProcessorDialect;
import org.thymeleaf.engine.AbstractTemplateHandler;
import org.thymeleaf.model.ICloseElementTag;
import org.thymeleaf.model.IOpenElementTag;
import org.thymeleaf.model.IText;
import org.thymeleaf.postprocessor.IPostProcessor;
import org.thymeleaf.postprocessor.PostProcessor;
import org.thymeleaf.templatemode.TemplateMode;

/** Keeps each figure of a page on one line with its unit, and the sides of a plate together. */
final class UnbrokenFigures extends AbstractDialect implements IPostProcessorDialect {
  /** A blank between a figure and the symbol of a unit, or beside the sign of a size. */
  private static final Pattern BETWEEN =
      Pattern.compile(
          " (?:(?<=\\d )(?=(?:%|°C|[kKghN]|ml|(?:m|c|µ)?m|min|MPa|m/s)(?![\\p{L}\\d])|× \\d)"
              + "|(?<=\\d × )(?=\\d))");

  /** What is typed, or read by the browser, stays as it is. */
  private static final Set<String> VERBATIM = Set.of("textarea", "option", "style", "script");

  UnbrokenFigures() {
    super("unbroken figures");
  }

  @Override
  public int getDialectPostProcessorPrecedence() {
    return 1_000;
  }

  @Override
  public Set<IPostProcessor> getPostProcessors() {
    return Set.of(new PostProcessor(TemplateMode.HTML, FigureHandler.class, 1_000));
  }

  /** Goes over one page; made anew for each. */
  public static final class FigureHandler extends AbstractTemplateHandler {
    private int verbatim;

    @Override
    public void handleOpenElement(IOpenElementTag tag) {
      verbatim += VERBATIM.contains(tag.getElementCompleteName()) ? 1 : 0;
      super.handleOpenElement(tag);
    }

    @Override
    public void handleCloseElement(ICloseElementTag tag) {
      verbatim -= VERBATIM.contains(tag.getElementCompleteName()) ? 1 : 0;
      super.handleCloseElement(tag);
    }

    @Override
    public void handleText(IText text) {
      String words = verbatim > 0 ? "" : text.getText();
      String unbroken = BETWEEN.matcher(words).replaceAll("\u00A0");
      super.handleText(
          unbroken.equals(words) ? text : getContext().getModelFactory().createText(unbroken));
    }
  }
}
