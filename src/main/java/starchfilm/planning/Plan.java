package starchfilm.planning;

import java.util.List;
import java.util.Optional;

/**
 * The recipes that can be made.
 *
 * @param request what was asked
 * @param recipes a few recipes that differ, each best at something; empty where nothing fits or
 *     something else was asked for
 * @param series the series, where one was asked for and can be made
 * @param pieces what the film needed takes, where that was asked for and fits
 * @param giveUps where nothing fits, which wish to give up and what that gives; else empty
 */
public record Plan(
    PlanRequest request,
    List<PlannedRecipe> recipes,
    Optional<Series> series,
    Optional<PiecesPlan> pieces,
    List<GiveUp> giveUps) {

  /** The recipes asked for. */
  static Plan of(PlanRequest request, List<PlannedRecipe> recipes) {
    return new Plan(request, recipes, Optional.empty(), Optional.empty(), List.of());
  }

  static Plan of(Series series) {
    return new Plan(series.request(), List.of(), Optional.of(series), Optional.empty(), List.of());
  }

  static Plan of(PiecesPlan pieces) {
    return new Plan(pieces.request(), List.of(), Optional.empty(), Optional.of(pieces), List.of());
  }

  /** Nothing fits. */
  static Plan impossible(PlanRequest request, List<GiveUp> giveUps) {
    return new Plan(request, List.of(), Optional.empty(), Optional.empty(), giveUps);
  }
}
