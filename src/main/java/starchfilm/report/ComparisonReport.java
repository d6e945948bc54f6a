package starchfilm.report;

import java.util.List;
import java.util.Map;

/** Makes the comparison page: one file that needs nothing else to be read. */
public final class ComparisonReport {
  private final PageRenderer renderer;

  /**
   * What the page shows of one trial.
   *
   * @param trial the trial
   * @param filled its template, filled: safe as it stands, for user text was escaped there
   */
  record Part(TrialView trial, String filled) {}

  /**
   * Makes the report.
   *
   * @param renderer what fills the templates
   */
  public ComparisonReport(PageRenderer renderer) {
    this.renderer = renderer;
  }

  /**
   * The page.
   *
   * @param comparison the trials and their forecasts; at least one
   * @return an HTML document; the same for the same comparison, byte for byte
   */
  public String html(Comparison comparison) {
    return html(comparison, "");
  }

  /**
   * The page as part of other pages.
   *
   * @param comparison the trials and their forecasts; at least one
   * @param back the address its head leads back to; empty for a page that stands alone
   * @return an HTML document; the same for the same comparison, byte for byte
   */
  public String html(Comparison comparison, String back) {
    ComparisonPage page = ComparisonPage.of(comparison);
    List<Part> parts = page.trials().parallelStream().map(this::part).toList();
    return renderer.render("comparison", Map.of("page", page, "parts", parts, "back", back));
  }

  private Part part(TrialView trial) {
    return new Part(trial, renderer.render("trial", "whole", Map.of("trial", trial)));
  }
}
