package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import starchfilm.advice.Knowledge;
import starchfilm.casting.Casting;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;
import starchfilm.learning.Workshop;

/** Lets an adviser know what was learnt where the trials lie. */
final class LearntKnowledge implements Knowledge {
  private final Supplier<List<Workshop>> workshops;

  /**
   * That knowledge.
   *
   * @param workshops the workshops of the trials that are advised on, as they are now
   */
  LearntKnowledge(Supplier<List<Workshop>> workshops) {
    this.workshops = workshops;
  }

  /** The workshop that knows a set-up's room; where there is but one, that one for any room. */
  private Workshop of(List<Workshop> known, Casting setup) {
    return known.stream()
        .filter(
            workshop ->
                workshop.learnt().rooms().stream()
                    .anyMatch(room -> room.isCalled(setup.place().name())))
        .findFirst()
        .orElseGet(() -> known.size() == 1 ? known.get(0) : Workshop.untaught(Path.of("")));
  }

  @Override
  public ParameterDistribution of(Casting setup) {
    return of(workshops.get(), setup)
        .factors(setup.place().name(), setup.composition().starchShares(), false);
  }

  @Override
  public FilmForecaster film(Casting setup) {
    return new FilmForecaster(of(workshops.get(), setup).film(setup.composition().starchShares()));
  }
}
