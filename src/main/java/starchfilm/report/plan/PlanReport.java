package starchfilm.report.plan;

import java.util.List;
import java.util.Map;
import starchfilm.planning.Plan;
import starchfilm.report.PageRenderer;
import starchfilm.report.caution.Cautions;
import starchfilm.report.words.RoomWords;

/** Makes the weigh-out sheets of a plan: one HTML file, one A4 page a recipe. */
public final class PlanReport {
  private final PageRenderer renderer;

  /**
   * Makes the report.
   *
   * @param renderer what fills the templates
   */
  public PlanReport(PageRenderer renderer) {
    this.renderer = renderer;
  }

  /**
   * The sheets.
   *
   * @param plan a plan with at least one recipe
   * @param remarks what was taken for granted, in sentences
   * @return an HTML document; the same for the same plan, byte for byte
   */
  public String html(Plan plan, List<String> remarks) {
    return renderer.render(
        "weigh-out",
        Map.of(
            "sheets",
            PlanSheets.of(plan),
            "room",
            RoomWords.temperature(plan.request().place().room())
                + ", "
                + RoomWords.humidity(plan.request().place().room())
                + ", air at "
                + RoomWords.speed(plan.request().place().room()),
            "remarks",
            remarks,
            "cautions",
            Cautions.of(plan.request())));
  }
}
