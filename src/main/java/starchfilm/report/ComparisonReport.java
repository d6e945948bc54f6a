package starchfilm.report;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Makes the comparison page: one file that needs nothing else to be read.
 *
 * @param renderer what fills the templates
 */
public record ComparisonReport(PageRenderer renderer) {
  private static final Pattern INDENTS = Pattern.compile("\\s*\n\\s*");

  /**
   * The part of the page on one trial.
   *
   * @param filled its template, filled: safe as it stands, for user text was escaped there
   */
  record FilledTrial(TrialView trial, String filled) {}

  /**
   * The page, held against its first trial.
   *
   * @param comparison the trials and their forecasts; at least one
   * @return an HTML document; the same for the same comparison, byte for byte
   */
  public String html(Comparison comparison) {
    return html(comparison, 0);
  }

  /**
   * The page.
   *
   * @param comparison the trials and their forecasts; at least one
   * @param base the place of the trial the others are held against, from 0
   * @return an HTML document; the same for the same comparison, byte for byte
   */
  public String html(Comparison comparison, int base) {
    String html = renderer.render("comparison", content(comparison, Around.nothing(base)));
    // Lines are indented for those who read templates; thousands of them weigh.
    return INDENTS.matcher(html).replaceAll("\n");
  }

  /**
   * The values of the template {@code compared :: content}.
   *
   * @param comparison the trials and their forecasts; at least one
   * @param around what surrounds it
   * @return the template's values, by their names
   */
  public Map<String, Object> content(Comparison comparison, Around around) {
    ComparisonPage page = ComparisonPage.of(comparison, around);
    List<FilledTrial> parts = page.trials().parallelStream().map(this::part).toList();
    return Map.of("page", page, "parts", parts);
  }

  private FilledTrial part(TrialView trial) {
    return new FilledTrial(
        trial,
        renderer.render(
            "trial", "whole", Map.of("trial", trial, "brief", true, "care", "#cautions")));
  }
}
