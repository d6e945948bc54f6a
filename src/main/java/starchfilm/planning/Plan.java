package starchfilm.planning;

import java.util.List;

/**
 * What can be made.
 *
 * @param request what was asked
 * @param recipes a few recipes that differ, each best at something; empty where nothing fits
 * @param giveUps where nothing fits, which wish to give up and what that gives; else empty
 */
public record Plan(PlanRequest request, List<PlannedRecipe> recipes, List<GiveUp> giveUps) {
  public Plan {
    recipes = List.copyOf(recipes);
    giveUps = List.copyOf(giveUps);
  }
}
