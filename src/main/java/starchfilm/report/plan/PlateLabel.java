package starchfilm.report.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Band;
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
        tare(trial),
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
    return plates(named.title(), recipe.plates(), Optional.empty(), "", recipe.drying(), pot);
  }

  private static Stream<PlateLabel> plates(
      String name,
      int count,
      Optional<LocalDateTime> poured,
      String tare,
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
                    // Others of the same size weigh something else.
                    number == 1 ? tare : "",
                    look(drying, calendar),
                    contents(recipe),
                    Cautions.onLabel(recipe)));
  }

  /** As it stands in the file; a forecast needs it nowhere. */
  private static String tare(Trial trial) {
    try {
      String grams =
          FieldEdit.shown(TrialFileText.of(trial.file()).text())
              .getOrDefault("pour.plate.tare_g", "");
      return grams.matches("[0-9].*") ? grams + " g" : "";
    } catch (NotWrittenException gone) {
      // The file was sound a moment ago; the blank is filled in by hand.
      return "";
    }
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
