package starchfilm.report.plan;

import java.util.List;
import starchfilm.planning.Plan;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Series;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.RecipeWords;

/**
 * A recipe of a plan under the name it has on sheets, labels and files.
 *
 * @param title what it is called
 * @param remark what a sheet or file says of it beside; may be empty
 * @param recipe the recipe
 */
public record NamedRecipe(String title, String remark, PlannedRecipe recipe) {
  /**
   * The recipes of a plan, called by what they are best at.
   *
   * @param plan the plan
   * @return in its order
   */
  public static List<NamedRecipe> of(Plan plan) {
    return plan.recipes().stream()
        .map(recipe -> new NamedRecipe(PlanWords.title(recipe.goals()), "", recipe))
        .toList();
  }

  /**
   * The groups of a series.
   *
   * @param series the series
   * @return in the order of their values
   */
  public static List<NamedRecipe> of(Series series) {
    return series.groups().stream()
        .map(
            group -> {
              int place = series.order().indexOf(series.groups().indexOf(group)) + 1;
              return new NamedRecipe(
                  group.name()
                      + ": "
                      + series.series().what().words()
                      + " "
                      + Figures.noted(group.asked()),
                  "Group "
                      + group.name()
                      + " of a series of "
                      + series.groups().size()
                      + " that differ in "
                      + series.series().what().words()
                      + " alone (here "
                      + Figures.two(group.weighed())
                      + " "
                      + series.series().what().unit()
                      + " once rounded). Its pot is number "
                      + place
                      + " to be cooked, drawn by lot (seed "
                      + series.series().seed()
                      + ").",
                  group.recipe());
            })
        .toList();
  }

  /** What its trial is called: a recipe of a plan by its starch, too. */
  String trialName() {
    String kinds = RecipeWords.starchKinds(recipe.potfuls().get(0).recipe());
    return recipe.goals().isEmpty() ? title : title + ": " + kinds + " starch";
  }
}
