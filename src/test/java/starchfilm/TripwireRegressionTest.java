package starchfilm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import starchfilm.advice.Adviser;
import starchfilm.advice.Contrast;
import starchfilm.advice.Diagnosis;
import starchfilm.advice.Difference;
import starchfilm.advice.NextTrial;
import starchfilm.advice.NotebookAdvice;
import starchfilm.advice.Suspicion;
import starchfilm.advice.TrialAdvice;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Sensitivity;
import starchfilm.change.TrialAnalysis;
import starchfilm.change.TrialAnalyst;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.film.Feel;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.diffusion.IntegrationFailure;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.units.Named;
import starchfilm.planning.Kitchen;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Planner;
import starchfilm.planning.PourThickness;
import starchfilm.planning.StarchAtHand;
import starchfilm.planning.Supplies;
import starchfilm.planning.Wish;
import starchfilm.request.ThicknessQuestion;
import starchfilm.request.TrialQuestion;
import starchfilm.request.Written;

/**
 * A tripwire, not evidence: what the program answers for some invented castings, held at 0.5 %.
 *
 * <p>The castings lie as trial files beside {@code tripwire.csv}, which holds the answers; nothing
 * there was measured. Where an answer is meant to move, {@code -Dtripwire.rewrite=true} writes the
 * table anew, and a line in the list at its head says what moved, by how much and why.
 */
class TripwireRegressionTest {
  private static final Path FOLDER = Path.of("src/test/resources/starchfilm/tripwire");
  private static final Path TABLE = FOLDER.resolve("tripwire.csv");
  private static final String REFUSED = "refused";
  private static final String NONE = "none";
  private static final String ZERO_POINT = "constant-room";

  private static final ObjectValue AS_IT_STANDS =
      new ObjectValue(new Place("", 1, 1), Map.of(), List.of());

  private static final double HOUR_S = 3_600;
  private static final double DAY_S = 24 * HOUR_S;
  private static final double G = 1e3;
  private static final double MM = 1e3;

  private final TripwireTable found = new TripwireTable();
  private final List<TrialForecast> forecasts = new ArrayList<>();

  @Test
  void everyAnswerForEveryCastingIsAsHeld() throws IOException {
    for (Path file : castings()) {
      answers(file);
    }
    advice();

    if (Boolean.getBoolean("tripwire.rewrite")) {
      found.rewrite(TABLE).forEach(System.out::println);
    }
    assertThat(found.differencesFrom(TripwireTable.read(TABLE))).isEmpty();
  }

  @Test
  void everyDifferenceIsNamedAtOnce() {
    TripwireTable held = new TripwireTable();
    held.number("one", "near", 1);
    held.number("one", "far", 1);
    held.number("one", "never", Double.POSITIVE_INFINITY);
    held.text("one", "word", "low");
    held.number("one", "gone", 1);
    found.number("one", "near", 1.0049);
    found.number("one", "far", 0.994);
    found.number("one", "never", 1);
    found.text("one", "word", "watch");
    found.number("two", "new", 1);

    assertThat(found.differencesFrom(held))
        .containsExactly(
            "one, far: held 1.0000, found 0.99400 (-0.6 %)",
            "one, never: held never, found 1.0000",
            "one, word: held low, found watch",
            "one, gone: held 1.0000, not found",
            "two, new: not held, found 1.0000");
  }

  private static List<Path> castings() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static String name(Trial trial) {
    return trial.file().getFileName().toString().replace(".json", "");
  }

  private void answers(Path file) {
    List<Trial> read = NotebookReader.read(List.of(file)).trials();
    if (read.isEmpty()) {
      found.text(file.getFileName().toString().replace(".json", ""), "file", REFUSED);
      return;
    }
    Trial trial = read.get(0);
    Workshop workshop = new Workshops(Clock.systemUTC()).of(trial);
    orRefused(trial, "dry", () -> dry(trial, workshop));
    orRefused(trial, "thickness", () -> thickness(trial, workshop));
    orRefused(trial, "plan", () -> plan(trial, workshop));
  }

  private void orRefused(Trial trial, String command, Runnable answer) {
    try {
      answer.run();
    } catch (IllegalArgumentException | IntegrationFailure sentence) {
      found.text(name(trial), command, REFUSED);
    }
  }

  /** As the command dry has it. */
  private void dry(Trial trial, Workshop workshop) {
    TrialAnalysis analysis = new TrialAnalyst(new TrialForecaster(workshop)).whole(trial);
    TrialForecast forecast = analysis.forecast();
    forecasts.add(forecast);
    String casting = name(trial);
    found.text(casting, "verdict", word(forecast.drying().verdict()));
    found.number(casting, "room.resting_moisture", forecast.drying().equilibriumMoisture());
    for (Spot spot : Spot.values()) {
      for (Milestone milestone : Milestone.values()) {
        String quantity = word(spot) + "." + word(milestone);
        MilestoneForecast comes = forecast.drying().at(spot).at(milestone);
        band(casting, quantity + ".h", comes.timeS().times(1 / HOUR_S));
        found.number(casting, quantity + ".share_reached", comes.shareReached());
      }
    }
    band(casting, "film.starch_in_paste", Band.exact(forecast.composition().dryStarch()));
    for (FilmProperty property : FilmProperty.values()) {
      band(casting, "film." + word(property), property.of(forecast.film()));
    }
    found.text(casting, "film.feel", word(forecast.film().feel()));
    found.text(casting, "crack.level", word(forecast.risks().crack().level()));
    found.number(
        casting, "crack.energy_over_toughness", forecast.risks().crack().energyOverToughness());
    found.number(
        casting,
        "crack.critical_dry_thickness_mm",
        MM * forecast.risks().crack().criticalDryThicknessM());
    found.text(casting, "curl.level", word(forecast.risks().curl().level()));
    found.number(casting, "curl.pull_over_adhesion", forecast.risks().curl().pullOverAdhesion());
    found.number(casting, "curl.shrinking", forecast.risks().curl().shrinking());
    found.text(casting, "mould.level", word(forecast.risks().mould().level()));
    found.number(casting, "mould.weighted_h", forecast.risks().mould().weightedHours());
    for (Sensitivity lever : analysis.sensitivities()) {
      found.number(
          casting,
          "more_" + word(lever.ingredient()) + ".thick_spot.dry_through.h",
          lever.dryThroughAfterS() / HOUR_S);
    }
  }

  /** As the command thickness has it with {@code --by 3d}. */
  private void thickness(Trial trial, Workshop workshop) {
    ThicknessQuestion question =
        ThicknessQuestion.read(
            Written.options(Map.of("--by", "3d")),
            Optional.of(new TrialQuestion.Base(trial, AS_IT_STANDS)),
            FOLDER,
            Clock.systemUTC());
    for (PourThickness pour : question.answer(workshop).pours()) {
      String quantity = "thickness." + Math.round(100 * pour.sure()) + "_of_100";
      found.text(name(trial), quantity + ".reach", word(pour.reach()));
      found.number(name(trial), quantity + ".wet_mm", MM * pour.wetThicknessM());
    }
  }

  private static double rimM(Trial trial) {
    double above = trial.casting().plate().rimHeightM();
    return above == 0 ? 0 : above + trial.casting().pour().wetThicknessM().value();
  }

  private static DryingPlace place(Trial trial) {
    return new DryingPlace(trial.casting().room(), trial.casting().benchTemperatureK());
  }

  /** As the command plan has it for the casting's own glycerol, starch, plates and room. */
  private void plan(Trial trial, Workshop workshop) {
    Recipe recipe = trial.recipe();
    PlanRequest request =
        new PlanRequest(
            new Supplies(
                recipe.glycerol().stock(),
                recipe.glycerol().massKg().value(),
                recipe.starches().stream()
                    .map(
                        starch ->
                            new StarchAtHand(
                                starch.kind(), OptionalDouble.empty(), starch.moistureFraction()))
                    .toList(),
                recipe.vinegar().acidityFraction().value()),
            new Kitchen(
                2e-3,
                1e-3,
                trial.casting().plate(),
                rimM(trial),
                trial.casting().pour().plates(),
                trial.casting().pour().unevenness(),
                List.of()),
            new Wish(
                Optional.of(Feel.FLEXIBLE),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()),
            place(trial),
            OptionalDouble.of(8 * DAY_S),
            PlanRequest.USUALLY_SURE,
            trial.casting().use());
    Plan plan =
        new Planner(
                workshop.factors(
                    trial.casting().place().name(),
                    Paste.cooked(recipe).composition().starchShares(),
                    false))
            .plan(request);
    String casting = name(trial);
    if (plan.recipes().isEmpty()) {
      found.text(casting, "plan", NONE);
      return;
    }
    PlannedRecipe first = plan.recipes().get(0);
    Recipe pot = first.potfuls().get(0).recipe();
    found.number(
        casting,
        "plan.starch_g",
        G * pot.starches().stream().mapToDouble(starch -> starch.massKg().value()).sum());
    found.number(casting, "plan.glycerol_g", G * pot.glycerol().massKg().value());
    found.number(casting, "plan.water_g", G * pot.waterKg().value());
    found.number(casting, "plan.wet_mm", MM * first.casting().pour().wetThicknessM().value());
    found.number(casting, "plan.plates", first.plates());
  }

  /** As the comparison page has it. */
  private void advice() {
    Adviser adviser = new Adviser(SameForAll.TEXTBOOK);
    List<Trial> trials = forecasts.stream().map(TrialForecast::trial).toList();
    TrialForecast zeroPoint =
        forecasts.stream()
            .filter(forecast -> name(forecast.trial()).equals(ZERO_POINT))
            .findFirst()
            .orElseThrow();
    for (TrialForecast forecast : forecasts) {
      String casting = name(forecast.trial());
      TrialAdvice advice = adviser.after(forecast, trials);
      advice.diagnoses().forEach(diagnosis -> causes(casting, diagnosis));
      next(casting, advice.next());
      Contrast contrast = adviser.contrast(zeroPoint, forecast);
      found.text(
          casting,
          "changed_from_" + ZERO_POINT,
          words(contrast.differences().stream().map(Difference::what)));
      found.text(
          casting,
          "agrees",
          words(contrast.outcomes().stream().map(outcome -> word(outcome.agreement()))));
    }
    NotebookAdvice over = adviser.over(forecasts).orElseThrow();
    found.text("all", "from", name(over.from().trial()));
    next("all", over.next());
  }

  private void causes(String casting, Diagnosis diagnosis) {
    String fault = "fault." + word(diagnosis.fault().kind());
    found.text(
        casting,
        fault + ".causes",
        words(diagnosis.suspicions().stream().map(each -> word(each.cause()))));
    for (Suspicion suspicion : diagnosis.suspicions()) {
      found.number(
          casting, fault + "." + word(suspicion.cause()) + ".support", suspicion.support());
    }
  }

  private void next(String casting, Optional<NextTrial> next) {
    found.text(
        casting,
        "advice",
        words(next.stream().flatMap(each -> each.adjustments().stream()).map(Named::of)));
    if (next.isPresent()) {
      band(
          casting,
          "advice.thick_spot.dry_through.h",
          next.get().after().dryThroughS().times(1 / HOUR_S));
      found.number(
          casting,
          "advice.crack.energy_over_toughness",
          next.get().after().risks().crack().energyOverToughness());
      band(casting, "advice.film.elongation", next.get().after().film().elongationAtBreak());
      next.get()
          .waitUntilS()
          .ifPresent(waitS -> found.number(casting, "advice.wait_until_h", waitS / HOUR_S));
    }
  }

  private void band(String casting, String quantity, Band band) {
    found.number(casting, quantity + ".low", band.low());
    found.number(casting, quantity + ".middle", band.middle());
    found.number(casting, quantity + ".high", band.high());
  }

  private static String words(Stream<String> each) {
    String joined = each.collect(Collectors.joining("; "));
    return joined.isEmpty() ? NONE : joined;
  }

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }
}
