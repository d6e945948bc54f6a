package starchfilm.report.plan;

import java.util.List;
import starchfilm.numerics.figures.Figures;
import starchfilm.planning.Plan;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Series;
import starchfilm.planning.Varied;
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
   * Whatever a plan found: its series, the pour of its pieces, or its recipes, called by what they
   * are best at.
   *
   * @param plan the plan
   * @return in its order; none where nothing fits
   */
  public static List<NamedRecipe> of(Plan plan) {
    return plan.series()
        .map(NamedRecipe::of)
        .or(
            () ->
                plan.pieces().map(each -> List.of(new NamedRecipe("Each pour", "", each.recipe()))))
        .orElseGet(
            () ->
                plan.recipes().stream()
                    .map(recipe -> new NamedRecipe(PlanWords.title(recipe.goals()), "", recipe))
                    .toList());
  }

  /**
   * The groups of a series.
   *
   * @param series the series
   * @return in the order of their values
   */
  public static List<NamedRecipe> of(Series series) {
    return series.groups().stream().map(group -> of(group, series)).toList();
  }

  private static NamedRecipe of(Series.Group group, Series series) {
    Varied what = series.series().what();
    return new NamedRecipe(
        group.name() + ": " + what.words() + " " + Figures.noted(group.asked()),
        ("Group %s of a series of %s that differ in %s alone (here %s %s once rounded). Its pot is"
                + " number %s to be cooked, drawn by lot (seed %s).")
            .formatted(
                group.name(),
                series.groups().size(),
                what.words(),
                Figures.two(group.weighed()),
                what.unit(),
                series.order().indexOf(series.groups().indexOf(group)) + 1,
                series.series().seed()),
        group.recipe());
  }

  /** What its trial is called: a recipe of a plan by its starch, too. */
  String trialName() {
    String kinds = RecipeWords.starchKinds(recipe.potfuls().get(0).recipe());
    return recipe.goals().isEmpty() ? title : title + ": " + kinds + " starch";
  }
}
