package starchfilm.report;

import java.util.Map;
import java.util.stream.Collectors;

/**
 * Makes the comparison page: one file that needs nothing else to be read.
 *
 * @param renderer what fills the templates
 */
public record ComparisonReport(PageRenderer renderer) {
  /** Where the template leaves room for the parts; user text is escaped, so it cannot say this. */
  private static final String PARTS = "<!-- parts -->";

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
    ComparisonPage page = ComparisonPage.of(comparison, Around.nothing(base));
    // Filled beside one another, and put in as they are: a template would read them all again.
    String parts = page.trials().parallelStream().map(this::part).collect(Collectors.joining("\n"));
    return renderer
        .render("comparison", Map.of("page", page))
        .replace(PARTS, parts)
        .lines()
        // Lines are indented for those who read templates; thousands of blanks weigh.
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /**
   * The values of the template {@code compared :: content}.
   *
   * @param comparison the trials and their forecasts; at least one
   * @param around what surrounds it
   * @return the template's values, by their names
   */
  public Map<String, Object> content(Comparison comparison, Around around) {
    return Map.of("page", ComparisonPage.of(comparison, around));
  }

  private String part(TrialView trial) {
    return renderer.render(
        "compared", "part", Map.of("trial", trial, "brief", true, "care", "#cautions"));
  }
}
