package starchfilm.report.plan;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.casting.Room;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingVerdict;
import starchfilm.drying.Milestone;
import starchfilm.film.Feel;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.Oddity;
import starchfilm.forecast.TrialForecast;
import starchfilm.planning.CookSteps;
import starchfilm.planning.Kitchen;
import starchfilm.planning.Levelling;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.planning.Wish;
import starchfilm.report.plan.PlanSheet.Figure;
import starchfilm.report.words.Figures;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.Plural;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;
import starchfilm.report.words.Spans;

/** Puts a plan into words. */
public final class PlanSheets {
  /** A recipe shows no more limits than these. */
  private static final int MOST_LIMITS = 3;

  /** Share of what a plate without a rim holds from which a pour is warned of. */
  private static final double RUNS_OVER_SHARE = 0.7;

  /** A chance lower than asked by this is stated. */
  private static final double NOTICEABLE = 0.05;

  private PlanSheets() {}

  /**
   * The sheets of a plan.
   *
   * @param plan the plan
   * @return one a recipe, in its order
   */
  public static List<PlanSheet> of(Plan plan) {
    return of(NamedRecipe.of(plan), plan.request());
  }

  /**
   * The sheets of recipes.
   *
   * @param recipes the recipes
   * @param request what was asked
   * @return one a recipe, in their order
   */
  public static List<PlanSheet> of(List<NamedRecipe> recipes, PlanRequest request) {
    return IntStream.range(0, recipes.size())
        .mapToObj(
            i ->
                sheet(
                    i + 1,
                    recipes.get(i).title(),
                    recipes.get(i).recipe(),
                    request,
                    recipes.get(i).remark()))
        .toList();
  }

  /**
   * The sheet of a trial, as it is written.
   *
   * @param number its place among the sheets, from 1
   * @param forecast the trial
   * @return the sheet
   */
  static PlanSheet of(int number, TrialForecast forecast) {
    Trial trial = forecast.trial();
    PlannedRecipe recipe =
        PlannedRecipe.written(
            trial.recipe(), trial.casting(), forecast.film(), forecast.dryingAtThePour());
    return sheet(
        number,
        trial.name(),
        recipe,
        Optional.empty(),
        OptionalDouble.empty(),
        0,
        OddityWords.of(Oddity.of(trial)),
        List.of());
  }

  /**
   * The sheet of a planned recipe.
   *
   * @param number its place among the sheets, from 1
   * @param title what it is called
   * @param recipe the recipe
   * @param request what was asked
   * @param warning what else to know; may be empty
   */
  static PlanSheet sheet(
      int number, String title, PlannedRecipe recipe, PlanRequest request, String warning) {
    List<String> coarse =
        Oddity.of(recipe.casting(), recipe.potfuls().get(0).recipe(), true).stream()
            .filter(odd -> odd instanceof Oddity.CoarseBalance)
            .map(OddityWords::of)
            .toList();
    Optional<String> unsoured =
        Optional.of(
                "No vinegar: this pot wants so little that the balance's smallest step, "
                    + ReaderUnit.GRAM.noted(request.kitchen().scaleStepKg())
                    + ", would thin the paste.")
            .filter(words -> isUnsoured(recipe, request));
    return sheet(
        number,
        title,
        recipe,
        // A group of a series has its recipe set, whatever film that gives.
        Optional.of(request.wish()).filter(wish -> !recipe.goals().isEmpty()),
        request.byS(),
        request.sure(),
        Stream.of(
                Stream.of(warning).filter(words -> !words.isEmpty()),
                unsoured.stream(),
                coarse.stream())
            .flatMap(each -> each)
            .toList(),
        request.kitchen().sizes());
  }

  /** Whether there is vinegar and the search took some, but none is left once it is rounded. */
  private static boolean isUnsoured(PlannedRecipe recipe, PlanRequest request) {
    return !recipe.goals().isEmpty()
        && request.supplies().vinegarAcidityFraction() > 0
        && recipe.potfuls().get(0).recipe().vinegar().massKg().value() == 0;
  }

  private static PlanSheet sheet(
      int number,
      String title,
      PlannedRecipe recipe,
      Optional<Wish> wish,
      OptionalDouble byS,
      double sure,
      List<String> odd,
      List<Kitchen.Size> sizes) {
    return new PlanSheet(
        number,
        title,
        summary(recipe),
        potfuls(recipe.potfuls()),
        cook(recipe.cook()),
        topUp(recipe.potfuls()),
        pour(recipe, sizes),
        IntStream.rangeClosed(1, recipe.plates()).boxed().toList(),
        ReaderUnit.GRAM.noted(recipe.pourKg()),
        film(recipe, wish),
        drying(recipe),
        byDate(recipe, byS),
        recipe.limits().stream()
            .map(PlanWords::sentence)
            .flatMap(Optional::stream)
            .limit(MOST_LIMITS)
            .toList(),
        warnings(recipe, sure, odd),
        room(recipe.casting().room()));
  }

  private static String room(Room room) {
    return RoomWords.temperature(room)
        + ", "
        + RoomWords.humidity(room)
        + ", air at "
        + RoomWords.speed(room);
  }

  private static List<PlanSheet.Potful> potfuls(List<Potful> potfuls) {
    boolean alone = potfuls.size() == 1 && potfuls.get(0).times() == 1;
    return potfuls.stream()
        .map(potful -> PlanSheet.Potful.of(potful, PlanSheet.Potful.heading(potful, alone)))
        .toList();
  }

  private static String summary(PlannedRecipe recipe) {
    String kinds = RecipeWords.starchKinds(recipe.potfuls().get(0).recipe());
    return "%s starch on %s of %s: %s film of about %s, %s in all"
        .formatted(
            PlainWords.capital(kinds),
            Plural.of(recipe.plates(), "plate"),
            RecipeWords.plate(recipe.casting().plate()),
            PlainWords.word(recipe.film().feel()),
            ReaderUnit.MILLIMETRE.figure(recipe.film().dryThicknessM().middle()),
            ReaderUnit.GRAM.figure(recipe.filmKg()));
  }

  private static List<String> cook(CookSteps cook) {
    return List.of(
        "Weigh the empty pot and note it.",
        "Stir everything you weighed out into the cold water until no lump is left.",
        ("Heat slowly and keep stirring: it thickens between %s and %s °C, and scorches on the"
                + " bottom if left alone.")
            .formatted(
                ReaderUnit.CELSIUS.two(cook.gelatinisesFromK()),
                ReaderUnit.CELSIUS.two(cook.gelatinisedAtK())),
        "Hold it at %s °C for %s min, then stop: longer or hotter only thins it. %s"
            .formatted(
                range(cook.topCelsius().min(), cook.topCelsius().max()),
                range(cook.holdMinutes().min(), cook.holdMinutes().max()),
                String.join(" ", cook.remarks())));
  }

  private static String topUp(List<Potful> potfuls) {
    return "Weigh the pot again and add hot water until it holds "
        + String.join(
            " or ",
            potfuls.stream().map(p -> ReaderUnit.GRAM.noted(p.cookedKg())).distinct().toList())
        + " of paste; stir.";
  }

  private static String range(double from, double to) {
    return from == to ? Figures.noted(from) : Figures.range(Figures.noted(from), Figures.noted(to));
  }

  private static List<String> pour(PlannedRecipe recipe, List<Kitchen.Size> sizes) {
    Levelling levelling = recipe.levelling();
    double wet = recipe.casting().pour().wetThicknessM().value();
    List<String> pour = new ArrayList<>();
    pour.add(
        "Let bubbles rise. At about %s pour %s, on the scale: %s wet. About 5 %% stays in the pot."
            .formatted(
                ReaderUnit.CELSIUS.figure(recipe.casting().pour().pasteTemperatureK()),
                perPlate(recipe, sizes),
                ReaderUnit.MILLIMETRE.figure(wet)));
    if (wet < levelling.levelsFromM()) {
      pour.add(
          ("Spread it with a rod: below about %s this paste hardly levels by itself before it sets"
                  + " (viscosity assumed).")
              .formatted(ReaderUnit.MILLIMETRE.figure(levelling.levelsFromM())));
    }
    if (recipe.casting().plate().rimHeightM() == 0
        && wet > RUNS_OVER_SHARE * levelling.standsUpToM()) {
      pour.add(
          "A plate without a rim holds about %s at most; dam the edge or pour with care."
              .formatted(ReaderUnit.MILLIMETRE.figure(levelling.standsUpToM())));
    }
    return pour;
  }

  /** Equally thick everywhere, so that a plate takes its share by its area. */
  private static String perPlate(PlannedRecipe recipe, List<Kitchen.Size> sizes) {
    if (sizes.size() < 2) {
      return ReaderUnit.GRAM.noted(recipe.pourKg()) + " on each level plate";
    }
    double kgPerM2 = recipe.pourKg() / recipe.casting().plate().areaM2();
    return "on each level plate "
        + sizes.stream()
            .map(Kitchen.Size::plate)
            .map(
                plate ->
                    Figures.whole(ReaderUnit.GRAM.of(kgPerM2 * plate.areaM2()))
                        + " g ("
                        + RecipeWords.plateSize(plate)
                        + ")")
            .distinct()
            .collect(joining(", "));
  }

  private static List<Figure> film(PlannedRecipe recipe, Optional<Wish> wish) {
    return List.of(
        new Figure("feel", feel(recipe, wish)),
        new Figure("dry thickness", ReaderUnit.MILLIMETRE.band(recipe.film().dryThicknessM())),
        figure(
            "strength",
            FilmProperty.TENSILE_STRENGTH,
            ReaderUnit.MEGAPASCAL.band(recipe.film().tensileStrengthPa()),
            recipe),
        figure(
            "stretch at break",
            FilmProperty.ELONGATION,
            ReaderUnit.PERCENT.band(recipe.film().elongationAtBreak()),
            recipe),
        new Figure(
            "plasticiser",
            Figures.two(100 * recipe.casting().composition().glycerolPerDryStarch())
                + " g glycerol per 100 g dry starch"),
        new Figure(
            "paste",
            "%s starch, %s dry solids, pH about %s"
                .formatted(
                    ReaderUnit.PERCENT.figure(recipe.casting().composition().dryStarch()),
                    ReaderUnit.PERCENT.figure(recipe.casting().composition().drySolids()),
                    Figures.two(recipe.film().acid().pastePh()))));
  }

  /** The feel against the wish, and the share of each feel, once. */
  private static String feel(PlannedRecipe recipe, Optional<Wish> wish) {
    Feel feel = recipe.film().feel();
    String shares = PlainWords.sentence(recipe.film().feelChances());
    if (wish.isEmpty()) {
      return (PlainWords.word(feel) + ". " + shares).strip();
    }
    String wished = PlainWords.word(feel) + against(recipe, wish.get());
    return shares.isEmpty()
        ? wished + "."
        : wished + ": " + shares.substring(0, 1).toLowerCase(Locale.ROOT) + shares.substring(1);
  }

  private static String against(PlannedRecipe recipe, Wish wish) {
    if (wish.strengthPa().isPresent() || wish.elongation().isPresent()) {
      return ", strength and stretch as wished in "
          + PlanWords.chance(recipe.chances().wish())
          + " likely cases";
    }
    Feel wished = wish.feel().orElseThrow();
    return wished == recipe.film().feel()
        ? ", as wished"
        : " rather than " + PlainWords.word(wished);
  }

  private static Figure figure(
      String name, FilmProperty property, String figure, PlannedRecipe recipe) {
    return new Figure(name, PlainWords.unlessWithheld(recipe.film(), property, figure));
  }

  private static List<Figure> drying(PlannedRecipe recipe) {
    if (recipe.drying().verdict() == DryingVerdict.TOO_DAMP) {
      return List.of(new Figure("in this room", "never; the air is too damp"));
    }
    List<Figure> figures = new ArrayList<>();
    figures.add(figure("skin-dry, average", Spot.NOMINAL, Milestone.SKIN_DRY, recipe));
    figures.add(figure("peelable, thick spot", Spot.THICK_SPOT, Milestone.PEELABLE, recipe));
    figures.add(figure("dry through, thin edge", Spot.THIN_EDGE, Milestone.DRY_THROUGH, recipe));
    figures.add(figure("dry through, thick spot", Spot.THICK_SPOT, Milestone.DRY_THROUGH, recipe));
    return figures;
  }

  private static Figure figure(String name, Spot spot, Milestone milestone, PlannedRecipe recipe) {
    return new Figure(name, Spans.of(recipe.drying().at(spot).at(milestone).timeS()));
  }

  private static String byDate(PlannedRecipe recipe, OptionalDouble byS) {
    if (recipe.chances().byDate().isEmpty()) {
      return "";
    }
    return "Ready by your date, %s after the pour, in %s likely cases."
        .formatted(
            Spans.of(byS.orElseThrow()), PlanWords.chance(recipe.chances().byDate().getAsDouble()));
  }

  private static List<String> warnings(PlannedRecipe recipe, double sure, List<String> odd) {
    List<String> warnings = new ArrayList<>(odd);
    if (!recipe.chances().asWished() && !recipe.goals().isEmpty()) {
      warnings.add(
          ("The balance is too coarse for such small amounts: rounded, the film is %s and not what"
                  + " you asked for. Weigh out more at once, or use a finer balance.")
              .formatted(PlainWords.word(recipe.film().feel())));
    }
    if (recipe.chances().byDate().isPresent()
        && recipe.chances().byDate().getAsDouble() < sure - NOTICEABLE) {
      warnings.add(
          "Rounded to the balance, the date is less certain than you asked; pour"
              + " a little less.");
    }
    switch (recipe.drying().verdict()) {
      case NEVER_PEELABLE ->
          warnings.add(
              "In this room it stays too moist to peel; move it to drier air at the" + " end.");
      case MAY_STAY_SOFT ->
          warnings.add(
              "In this room it may stay too moist to peel; the times are those of"
                  + " the likely cases in which it does not. Move it to drier air at the"
                  + " end.");
      case DRIES, TOO_DAMP -> {}
    }
    recipe.film().cautions().stream().map(PlainWords::word).forEach(warnings::add);
    return warnings;
  }
}
