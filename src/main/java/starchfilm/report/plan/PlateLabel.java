package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.planning.PlannedRecipe;
import starchfilm.report.caution.Cautions;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RecipeWords;

/**
 * A label to stick on a plate.
 *
 * @param name what its maker calls the trial
 * @param plate which plate of how many; empty for the only one
 * @param poured when it was poured; empty to be written by hand
 * @param tare the empty plate, with its unit; empty to be written by hand
 * @param look when to look at it
 * @param contents what is in it
 * @param caution what its glycerol calls for; empty for bought glycerol or none
 */
public record PlateLabel(
    String name,
    String plate,
    String poured,
    String tare,
    String look,
    String contents,
    String caution) {
  /** Figures of a tare: more than any kitchen balance shows. */
  private static final int TARE_FIGURES = 6;

  /**
   * The labels of a trial.
   *
   * @param forecast the trial
   * @return one a plate
   */
  public static Stream<PlateLabel> of(TrialForecast forecast) {
    Trial trial = forecast.trial();
    return plates(
        trial.name(),
        trial.casting().pour().plates(),
        trial.pouredAt(),
        trial.seen().eachPlate().emptyKg(),
        forecast.drying(),
        trial.recipe());
  }

  /**
   * The labels of a planned recipe.
   *
   * @param named the recipe
   * @return one a plate
   */
  public static Stream<PlateLabel> of(NamedRecipe named) {
    PlannedRecipe recipe = named.recipe();
    Recipe pot = recipe.potfuls().get(0).recipe();
    return plates(named.title(), recipe.plates(), Optional.empty(), Map.of(), recipe.drying(), pot);
  }

  private static Stream<PlateLabel> plates(
      String name,
      int count,
      Optional<LocalDateTime> poured,
      Map<Integer, Double> emptyKg,
      DryingForecast drying,
      Recipe recipe) {
    PourCalendar calendar = new PourCalendar(poured);
    return IntStream.rangeClosed(1, count)
        .mapToObj(
            number ->
                new PlateLabel(
                    name,
                    count == 1 ? "" : "plate " + number + " of " + count,
                    poured.isEmpty() ? "" : calendar.pour(),
                    tare(emptyKg, number),
                    look(drying, calendar),
                    contents(recipe),
                    Cautions.onLabel(recipe)));
  }

  /** A mass noted for all plates is that of the first: others of its size weigh something else. */
  private static String tare(Map<Integer, Double> emptyKg, int number) {
    return Optional.ofNullable(emptyKg.get(number))
        .filter(kg -> number == 1 || !kg.equals(emptyKg.get(1)))
        .map(kg -> Figures.of(GRAM.of(kg), TARE_FIGURES) + " g")
        .orElse("");
  }

  private static String look(DryingForecast drying, PourCalendar calendar) {
    Band peelable = drying.peelableS();
    if (Double.isInfinite(peelable.middle())) {
      return "may not dry in this room; look daily";
    }
    return "peelable " + calendar.range(peelable);
  }

  private static String contents(Recipe recipe) {
    List<String> parts = new ArrayList<>();
    parts.add(RecipeWords.starchKinds(recipe) + " starch");
    parts.add("water");
    if (recipe.glycerol().massKg().value() > 0) {
      parts.add("glycerol");
    }
    if (recipe.vinegar().massKg().value() > 0) {
      parts.add("vinegar");
    }
    parts.addAll(recipe.others().keySet());
    return String.join(", ", parts);
  }
}
