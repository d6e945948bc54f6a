package starchfilm.report.plan;

import static java.util.stream.Collectors.joining;
import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import starchfilm.casting.Casting;
import starchfilm.casting.Plate;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingVerdict;
import starchfilm.drying.Milestone;
import starchfilm.film.Feel;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.Oddity;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.planning.CookSteps;
import starchfilm.planning.Kitchen.EqualPlates;
import starchfilm.planning.Levelling;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Wish;
import starchfilm.report.FilmFigure;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;

/**
 * One recipe of a plan in the reader's units and words: what a terminal prints and what a printed
 * sheet shows.
 *
 * @param number its place in the plan, from 1
 * @param title what it is best at
 * @param recipe the recipe
 * @param request what was asked; empty for a trial as it is written
 * @param notes what else to know
 */
public record RecipeSheet(
    int number,
    String title,
    PlannedRecipe recipe,
    Optional<PlanRequest> request,
    List<String> notes) {
  /** A recipe shows no more limits than these. */
  private static final int MOST_LIMITS = 3;

  /** Share of what a plate without a rim holds from which a pour is warned of. */
  private static final double RUNS_OVER_SHARE = 0.7;

  /** A chance lower than asked by this is stated. */
  private static final double NOTICEABLE = 0.05;

  /**
   * A figure with its range.
   *
   * @param name what
   * @param value with unit and range
   */
  public record Figure(String name, String value) {}

  /**
   * The sheets of recipes.
   *
   * @param recipes the recipes
   * @param request what was asked
   * @return one a recipe, in their order
   */
  public static List<RecipeSheet> of(List<NamedRecipe> recipes, PlanRequest request) {
    List<RecipeSheet> sheets = new ArrayList<>();
    for (NamedRecipe named : recipes) {
      sheets.add(
          new RecipeSheet(
              sheets.size() + 1,
              named.title(),
              named.recipe(),
              Optional.of(request),
              notes(named, request)));
    }
    return sheets;
  }

  private static List<String> notes(NamedRecipe named, PlanRequest request) {
    PlannedRecipe recipe = named.recipe();
    List<String> notes = new ArrayList<>();
    if (!named.remark().isEmpty()) {
      notes.add(named.remark());
    }
    if (isUnsoured(recipe, request)) {
      notes.add(
          "No vinegar: this pot wants so little that the balance's smallest step, %s, would thin the paste."
              .formatted(GRAM.noted(request.kitchen().scaleStepKg())));
    }
    Oddity.of(recipe.casting(), recipe.potfuls().get(0).recipe(), true).stream()
        .filter(odd -> odd instanceof Oddity.CoarseBalance)
        .map(OddityWords::of)
        .forEach(notes::add);
    return notes;
  }

  /** Whether there is vinegar and the search took some, but none is left once it is rounded. */
  private static boolean isUnsoured(PlannedRecipe recipe, PlanRequest request) {
    return !recipe.goals().isEmpty()
        && request.supplies().vinegarAcidityFraction() > 0
        && recipe.potfuls().get(0).recipe().vinegar().massKg().value() == 0;
  }

  /**
   * The sheet of a trial, as it is written.
   *
   * @param number its place among the sheets, from 1
   * @param forecast the trial
   * @return the sheet
   */
  static RecipeSheet of(int number, TrialForecast forecast) {
    Trial trial = forecast.trial();
    return new RecipeSheet(
        number,
        trial.name(),
        PlannedRecipe.written(
            trial.recipe(), trial.casting(), forecast.film(), forecast.dryingAtThePour()),
        Optional.empty(),
        OddityWords.of(Oddity.of(trial)));
  }

  /** The kinds of starch in it. */
  String starchKinds() {
    return RecipeWords.starchKinds(recipe.potfuls().get(0).recipe());
  }

  /** The film that was wished for. A group of a series has its recipe set, whatever it gives. */
  private Optional<Wish> wish() {
    return request.map(PlanRequest::wish).filter(wish -> !recipe.goals().isEmpty());
  }

  /** The air it dries in. */
  public String room() {
    return RoomWords.air(recipe.casting().room());
  }

  /** One blank line a plate. */
  public List<Integer> plates() {
    return IntStream.rangeClosed(1, recipe.plates()).boxed().toList();
  }

  /** Paste on one plate, with its unit. */
  public String pourGrams() {
    return GRAM.noted(recipe.pourKg());
  }

  /** The ingredients to weigh out. */
  public List<PotfulSheet> potfuls() {
    boolean alone = recipe.potfuls().size() == 1 && recipe.potfuls().get(0).times() == 1;
    return recipe.potfuls().stream()
        .map(potful -> PotfulSheet.of(potful, PotfulSheet.heading(potful, alone)))
        .toList();
  }

  /**
   * The answer in one sentence: what to pour, and when it is dry.
   *
   * @param now when it is poured, by the clock on the wall
   * @return such as {@code Pour 139 g on each level plate, 2.3 mm wet; poured now, it is dry
   *     through in the thick spot Tue 1 Dec, about 13:00 (10–17).}
   */
  public String lead(LocalDateTime now) {
    Band dryS = recipe.drying().at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
    return "Pour %s, %s wet; %s."
        .formatted(
            perPlate(),
            MILLIMETRE.figure(recipe.casting().pour().wetThicknessM().value()),
            recipe.drying().verdict() == DryingVerdict.TOO_DAMP || Double.isInfinite(dryS.middle())
                ? "in this room it does not dry through"
                : "poured now, it is dry through in the thick spot "
                    + new PourCalendar(Optional.of(now)).range(dryS));
  }

  /** The film in one line. */
  public String summary() {
    String film =
        "%s starch on %s of %s: %s film"
            .formatted(
                PlainWords.capital(starchKinds()),
                Plural.of(recipe.plates(), "plate"),
                RecipeWords.plate(recipe.casting().plate()),
                PlainWords.word(recipe.film().feel()));
    return recipe.film().withheld(FilmProperty.DRY_THICKNESS).isPresent()
        ? film
        : "%s of about %s, %s in all"
            .formatted(
                film,
                MICROMETRE.figure(recipe.film().dryThicknessM().middle()),
                GRAM.figure(recipe.filmKg()));
  }

  /** The steps of the cook, one sentence each; the same for every recipe of this starch. */
  public List<String> cook() {
    CookSteps cook = recipe.cook();
    return List.of(
        "Weigh the empty pot and note it.",
        "Stir everything you weighed out into the cold water until no lump is left.",
        ("Heat slowly and keep stirring: it thickens between %s and %s °C, and scorches on the"
                + " bottom if left alone.")
            .formatted(CELSIUS.two(cook.gelatinisesFromK()), CELSIUS.two(cook.gelatinisedAtK())),
        "Hold it at %s °C for %s min, then stop: longer or hotter only thins it. %s"
            .formatted(
                range(cook.topCelsius().min(), cook.topCelsius().max()),
                range(cook.holdMinutes().min(), cook.holdMinutes().max()),
                String.join(" ", cook.remarks())));
  }

  /** The last step of the cook, with its grams. */
  public String topUp() {
    return recipe.potfuls().stream()
        .map(potful -> Figures.three(GRAM.of(potful.cookedKg())) + " g")
        .distinct()
        .collect(
            joining(
                " or ",
                "Weigh the pot again and add hot water until it holds ",
                " of paste; stir."));
  }

  private static String range(double from, double to) {
    return Figures.range(Figures.two(from), Figures.two(to));
  }

  /** The steps of the pour, in sentences. */
  public List<String> pour() {
    Levelling levelling = recipe.levelling();
    double wet = recipe.casting().pour().wetThicknessM().value();
    List<String> pour = new ArrayList<>();
    pour.add(
        "Let bubbles rise. At about %s pour %s, on the scale: %s wet. About 5 %% stays in the pot."
            .formatted(
                CELSIUS.figure(recipe.casting().pour().pasteTemperatureK()),
                perPlate(),
                MILLIMETRE.figure(wet)));
    if (wet < levelling.levelsFromM()) {
      pour.add(
          ("Spread it with a rod: below about %s this paste hardly levels by itself before it sets"
                  + " (viscosity assumed).")
              .formatted(MILLIMETRE.figure(levelling.levelsFromM())));
    }
    if (recipe.casting().plate().rimHeightM() == 0
        && wet > RUNS_OVER_SHARE * levelling.standsUpToM()) {
      pour.add(
          "A plate without a rim holds about %s at most; dam the edge or pour with care."
              .formatted(MILLIMETRE.figure(levelling.standsUpToM())));
    }
    return pour;
  }

  /** Equally thick everywhere, so that a plate takes its share by its area. */
  private String perPlate() {
    List<EqualPlates> sizes = request.map(asked -> asked.kitchen().sizes()).orElse(List.of());
    Casting casting = recipe.casting();
    List<Plate> each =
        sizes.size() > 1
            ? sizes.stream().map(EqualPlates::plate).toList()
            : IntStream.rangeClosed(1, casting.pour().areasM2().size())
                .mapToObj(number -> casting.ofPlate(number).plate())
                .toList();
    if (each.isEmpty()) {
      return GRAM.noted(recipe.pourKg()) + " on each level plate";
    }
    double kgPerM2 = recipe.pourKg() / casting.plate().areaM2();
    return "on each level plate "
        + each.stream()
            .map(
                plate ->
                    Figures.whole(GRAM.of(kgPerM2 * plate.areaM2())) + " g (" + plate.size() + ")")
            .distinct()
            .collect(joining(", "));
  }

  /** The figures of the film. */
  public List<Figure> film() {
    return List.of(
        new Figure("feel", feel()),
        new Figure("dry thickness", FilmFigure.THICKNESS.band(recipe.film())),
        new Figure("strength", FilmFigure.STRENGTH.band(recipe.film())),
        new Figure("stretch at break", FilmFigure.ELONGATION.band(recipe.film())),
        new Figure(
            "plasticiser",
            RecipeWords.plasticiser(recipe.casting().composition().glycerolPerDryStarch())),
        new Figure(
            "paste",
            "%s starch, %s dry solids, pH about %s"
                .formatted(
                    PERCENT.figure(recipe.casting().composition().dryStarch()),
                    PERCENT.figure(recipe.casting().composition().drySolids()),
                    Figures.two(recipe.film().acid().pastePh()))));
  }

  /** The feel against the wish, and the share of each feel, once. */
  private String feel() {
    Feel feel = recipe.film().feel();
    String shares = PlainWords.sentence(recipe.film().feelChances());
    String wished = PlainWords.word(feel) + wish().map(this::against).orElse("") + ".";
    return shares.isEmpty()
        ? wished
        : PlainWords.afterColon(shares).replaceFirst("\\.$", "; the middle one is ") + wished;
  }

  private String against(Wish wish) {
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

  /** The times until it is ready. */
  public List<Figure> drying() {
    if (recipe.drying().verdict() == DryingVerdict.TOO_DAMP) {
      return List.of(new Figure("in this room", "never; the air is too damp"));
    }
    return List.of(
        figure("skin-dry, average", Spot.NOMINAL, Milestone.SKIN_DRY),
        figure("peelable, thick spot", Spot.THICK_SPOT, Milestone.PEELABLE),
        figure("dry through, thin edge", Spot.THIN_EDGE, Milestone.DRY_THROUGH),
        figure("dry through, thick spot", Spot.THICK_SPOT, Milestone.DRY_THROUGH));
  }

  private Figure figure(String name, Spot spot, Milestone milestone) {
    return new Figure(name, Spans.of(recipe.drying().at(spot).at(milestone).timeS()));
  }

  /** The chance to be ready by the date; empty without a date. */
  public String byDate() {
    if (recipe.chances().byDate().isEmpty()) {
      return "";
    }
    return "Ready by your date, %s after the pour, in %s likely cases."
        .formatted(
            Spans.given(request.orElseThrow().byS().orElseThrow()),
            PlanWords.chance(recipe.chances().byDate().getAsDouble()));
  }

  /** The limits that keep it from giving more. */
  public List<String> limits() {
    return recipe.limits().stream()
        .map(PlanWords::sentence)
        .flatMap(Optional::stream)
        .limit(MOST_LIMITS)
        .toList();
  }

  /** The warnings of what may go wrong with this film. */
  public List<String> warnings() {
    List<String> warnings = new ArrayList<>(notes);
    double sure = request.map(PlanRequest::sure).orElse(0.0);
    if (!recipe.chances().asWished() && !recipe.goals().isEmpty()) {
      warnings.add(
          ("The balance is too coarse for such small amounts: rounded, the film is %s and not what"
                  + " you asked for. Weigh out more at once, or use a finer balance.")
              .formatted(PlainWords.word(recipe.film().feel())));
    }
    if (recipe.chances().byDate().isPresent()
        && recipe.chances().byDate().getAsDouble() < sure - NOTICEABLE) {
      warnings.add(
          "Rounded to the balance, the date is less certain than you asked; pour a little less.");
    }
    switch (recipe.drying().verdict()) {
      case NEVER_PEELABLE ->
          warnings.add("In this room it stays too moist to peel; move it to drier air at the end.");
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
