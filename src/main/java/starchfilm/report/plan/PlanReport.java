package starchfilm.report.plan;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.PageRenderer;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;

/**
 * Makes weigh-out sheets, one A4 page a recipe, and labels to stick on plates: HTML to print.
 *
 * @param renderer what fills the templates
 */
public record PlanReport(PageRenderer renderer) {
  /**
   * The sheets.
   *
   * @param plan at least one recipe
   * @return an HTML document; the same for the same plan, byte for byte
   */
  public String html(PlanSheet plan) {
    return html(plan.sheets(), plan.question().assumptions(), plan.cautions());
  }

  /**
   * The sheets of trials, as they are written.
   *
   * @param trials at least one
   * @return an HTML document; the same for the same trials, byte for byte
   */
  public String html(List<TrialForecast> trials) {
    List<RecipeSheet> sheets =
        IntStream.range(0, trials.size())
            .mapToObj(i -> RecipeSheet.of(i + 1, trials.get(i)))
            .toList();
    return html(sheets, List.of(), Cautions.of(trials).all());
  }

  private String html(List<RecipeSheet> sheets, List<String> remarks, List<Caution> cautions) {
    return renderer.render(
        "weigh-out", Map.of("sheets", sheets, "remarks", remarks, "cautions", cautions));
  }

  /**
   * Labels, many on one A4 sheet.
   *
   * @param labels one a plate
   * @return an HTML document
   */
  public String labels(List<PlateLabel> labels) {
    return renderer.render("labels", Map.of("labels", labels));
  }
}
