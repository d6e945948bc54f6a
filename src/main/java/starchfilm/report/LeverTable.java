package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.change.NoEffectReason;
import starchfilm.change.PropertyEffect;
import starchfilm.change.Sensitivity;
import starchfilm.change.TrialAnalysis;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.words.PlainWords;

/** The effects of more of each ingredient on a trial. */
record LeverTable(TrialAnalysis trial) {
  private static final List<FilmProperty> SHOWN =
      List.of(
          FilmProperty.DRY_THICKNESS,
          FilmProperty.TENSILE_STRENGTH,
          FilmProperty.ELONGATION,
          FilmProperty.YOUNGS_MODULUS,
          FilmProperty.GLASS_TRANSITION,
          FilmProperty.VAPOUR_PERMEABILITY,
          FilmProperty.PASTE_PH);

  /** What stands where nothing moves. */
  private static final String STILL = "–";

  private static final String SAME_WAIT =
      "At the same pour thickness, a paste holds nearly the same water whichever"
          + " ingredient changes by a tenth, and the room takes nearly as long to"
          + " remove it: only pour and room change the drying time.";

  /** A waiting time that changes by less is shown as unchanged (ratio). */
  private static final double VISIBLE_RATIO = 0.01;

  /** The levers of a trial. */
  public static LeverTable of(TrialAnalysis trial) {
    return new LeverTable(trial);
  }

  /** The properties that move, beside the waiting time. */
  public List<FilmProperty> shown() {
    FilmForecast film = trial.forecast().film();
    return SHOWN.stream().filter(property -> film.withheld(property).isEmpty()).toList();
  }

  /** The reasons why something stays as it is, whole sentences. */
  public List<String> why() {
    List<String> why = new ArrayList<>();
    if (trial.sensitivities().stream().allMatch(lever -> readiness(lever).equals(STILL))) {
      why.add(SAME_WAIT);
    }
    List<FilmProperty> shown = shown();
    trial.sensitivities().forEach(lever -> why.addAll(reasons(lever, shown)));
    List<String> withheld =
        SHOWN.stream()
            .filter(property -> !shown.contains(property))
            .map(FilmProperty::tradeName)
            .toList();
    if (!withheld.isEmpty()) {
      why.add("Not stated of this film, nor what changes it: " + PlainWords.list(withheld) + ".");
    }
    return why;
  }

  /** The step of a lever: how much more of its ingredient it takes. */
  public String amount(Sensitivity lever) {
    double pasteKg = trial.forecast().casting().paste().massKg();
    String unit = lever.ingredient() == Ingredient.VINEGAR ? " acid" : "";
    String to = GRAM.two(lever.toKgPerKgPaste() * pasteKg) + " g" + unit;
    if (lever.fromKgPerKgPaste() == 0) {
      return "none → " + to;
    }
    double ratio = lever.toKgPerKgPaste() / lever.fromKgPerKgPaste();
    return ratio >= 2 ? "doubled" : "10 % more";
  }

  /** The effect of a lever on a property. */
  public String cell(Sensitivity lever, FilmProperty property) {
    PropertyEffect effect = lever.on(property);
    if (effect.unmoved().isPresent()) {
      return STILL;
    }
    return switch (property) {
      case GLASS_TRANSITION -> signed(effect.to() - effect.from()) + " K";
      case PASTE_PH -> Figures.three(effect.from()) + " → " + Figures.three(effect.to());
      default -> signed(100 * (effect.to() / effect.from() - 1)) + " %";
    };
  }

  /** The effect of a lever on the time until the film is dry through. */
  public String readiness(Sensitivity lever) {
    double now = lever.dryThroughBeforeS();
    double then = lever.dryThroughAfterS();
    if (now == then) {
      return STILL;
    }
    if (Double.isInfinite(now) || Double.isInfinite(then)) {
      return Double.isInfinite(then) ? "never" : "comes";
    }
    if (now == 0) {
      return "longer";
    }
    double ratio = then / now - 1;
    return Math.abs(ratio) < VISIBLE_RATIO ? STILL : signed(100 * ratio) + " %";
  }

  private static String signed(double value) {
    return (value > 0 ? "+" : "") + Figures.whole(value);
  }

  /** One sentence for all properties that stay for the same reason. */
  private static List<String> reasons(Sensitivity lever, List<FilmProperty> shown) {
    Map<String, List<String>> kept = new LinkedHashMap<>();
    for (FilmProperty property : shown) {
      for (NoEffectReason why : lever.on(property).unmoved().stream().toList()) {
        kept.computeIfAbsent(PlainWords.word(why), none -> new ArrayList<>())
            .add(property.tradeName());
      }
    }
    return kept.entrySet().stream()
        .map(
            cause ->
                "More %s leaves %s as before: %s."
                    .formatted(
                        PlainWords.word(lever.ingredient()),
                        PlainWords.list(cause.getValue()),
                        cause.getKey()))
        .toList();
  }
}
