package starchfilm.forecast;

import java.util.List;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.film.FilmForecast;
import starchfilm.film.Lever;
import starchfilm.film.risk.PlateRisks;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;

/**
 * A trial and what the program makes of it.
 *
 * @param trial the trial as noted
 * @param paste what was in the pot after the cook
 * @param composition the paste on the dry basis
 * @param film what the dry film will be like
 * @param drying how a plate of it dries
 * @param risks how a plate of it may crack or mould
 * @param levers what more of each ingredient would do, one an ingredient
 * @param weighingsTakenIn how many of its own weighings the drying forecast rests on; 0 for a
 *     forecast that can be held against them
 */
public record TrialForecast(
    Trial trial,
    Paste paste,
    Composition composition,
    FilmForecast film,
    DryingForecast drying,
    PlateRisks risks,
    List<PulledLever> levers,
    int weighingsTakenIn) {
  /**
   * What more of one ingredient would do, poured equally thick.
   *
   * @param film what it does to the film
   * @param dryThroughBeforeS dry-through of the thick spot as it is, in the middle case (s)
   * @param dryThroughAfterS the same with more of the ingredient (s)
   */
  public record PulledLever(Lever film, double dryThroughBeforeS, double dryThroughAfterS) {}

  /** Copies the list. */
  public TrialForecast {
    levers = List.copyOf(levers);
  }

  /**
   * Paste on one plate.
   *
   * @return kg; as weighed, or else from wet thickness, area and the paste's density
   */
  public double pouredKgPerPlate() {
    return trial.casting().pouredKg();
  }

  /**
   * Dry solids on one plate.
   *
   * @return kg
   */
  public double drySolidsKgPerPlate() {
    return pouredKgPerPlate() * composition.drySolids();
  }
}
