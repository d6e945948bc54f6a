package starchfilm.report.caution;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.advice.NextTrial;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.TrialForecast;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.Neutralisation;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.Recipe;
import starchfilm.planning.PlanRequest;
import starchfilm.report.words.RoomWords;

/** The cautions that the facts call for. */
public final class Cautions {
  /** Vinegar stronger than this is treated as an acid (kg/kg); judged, no source. */
  private static final double STRONG_ACIDITY = 0.1;

  /** Above this a plate burns and a plastic one softens (K); judged, no source. */
  private static final double HOT_K = 60 + ZERO_CELSIUS_K;

  /** Air that moves faster than in a still room is moved by a fan (m/s); judged, no source. */
  private static final double FAN_M_PER_S = 0.3;

  private final Set<Caution> apply = EnumSet.noneOf(Caution.class);

  private Cautions() {}

  /**
   * The cautions for anybody who casts film, whatever is in the jar.
   *
   * @return every caution that needs no particular jar
   */
  public static List<Caution> general() {
    return List.copyOf(
        EnumSet.complementOf(
            EnumSet.of(
                Caution.RECOVERED_WITH_ETHANOL,
                Caution.ALKALINE_JAR,
                Caution.SOUR_JAR,
                Caution.UNCERTAIN_PH)));
  }

  /**
   * The cautions for a jar.
   *
   * @param assay what is in it
   * @return the cautions, in their order
   */
  public static List<Caution> of(Assay assay) {
    Cautions cautions =
        new Cautions().glycerol(assay.origin(), assay.alcoholLeft().map(left -> left.alcohol()));
    assay.recovery().ifPresent(balance -> cautions.acidity(balance.neutralisation()));
    return cautions.and(Caution.HOT_GLYCEROL);
  }

  /**
   * The cautions for handling acids and lyes.
   *
   * @return the cautions, in their order
   */
  public static List<Caution> ofAcidsAndLyes() {
    return List.of(
        Caution.RECOVERED_GLYCEROL, Caution.LYE_AND_ACID, Caution.VINEGAR, Caution.RULES);
  }

  /**
   * The cautions for a plan.
   *
   * @param request what was asked
   * @return the cautions, in their order
   */
  public static List<Caution> of(PlanRequest request) {
    Cautions cautions = new Cautions().vinegar(request.supplies().vinegarAcidityFraction());
    if (request.supplies().glycerolKg() > 0) {
      cautions.glycerol(request.supplies().jar().origin(), Optional.empty());
    }
    return cautions
        .place(request.place())
        .and(Caution.HOT_GLYCEROL, Caution.MOULD, Caution.CLAIMS, Caution.RULES);
  }

  /**
   * The caution for a change that moves or heats air.
   *
   * @param next the change
   * @return one caution or none
   */
  public static List<Caution> of(NextTrial next) {
    return next.adjustments().contains(Change.FAN)
            || next.adjustments().contains(Change.WARMER_ROOM)
        ? List.of(Caution.FANS_AND_HEATERS)
        : List.of();
  }

  /**
   * The cautions that a recipe and the place where it dries give particular reason for.
   *
   * @param recipe what goes into the pot
   * @param place where it dries
   * @return the cautions, in their order; none for a plain recipe of bought glycerol
   */
  public static List<Caution> of(Recipe recipe, DryingPlace place) {
    return new Cautions().recipe(recipe).place(place).and();
  }

  /**
   * The cautions that a forecast trial gives particular reason for.
   *
   * @param forecast the trial with its forecast
   * @return the cautions, in their order; none for a plain recipe of bought glycerol
   */
  public static List<Caution> of(TrialForecast forecast) {
    return new Cautions().forecast(forecast).and();
  }

  /**
   * The cautions for a page of trials.
   *
   * @param forecasts the trials
   * @return the cautions of all of them, and those that any film calls for
   */
  public static OfPage of(List<TrialForecast> forecasts) {
    Cautions cautions = new Cautions();
    forecasts.forEach(cautions::forecast);
    List<Caution> named = cautions.and(Caution.HOT_GLYCEROL);
    return new OfPage(
        named,
        Stream.of(Caution.VINEGAR, Caution.MOULD, Caution.CLAIMS, Caution.RULES)
            .filter(caution -> !named.contains(caution))
            .toList());
  }

  /**
   * The cautions of a page of trials.
   *
   * @param named what its trials give reason for, and hot paste; always in sight
   * @param others what any film calls for besides
   */
  public record OfPage(List<Caution> named, List<Caution> others) {
    /** Both, in the order of cautions. */
    public List<Caution> all() {
      return Stream.concat(named.stream(), others.stream()).sorted().toList();
    }
  }

  /**
   * The caution for the glycerol in a film, as short as a label on a plate must be.
   *
   * @param recipe what went into the pot
   * @return a few words; empty for bought glycerol or none
   */
  public static String onLabel(Recipe recipe) {
    GlycerolOrigin origin = recipe.glycerol().stock().origin();
    if (recipe.glycerol().massKg().value() == 0 || origin == GlycerolOrigin.BOUGHT) {
      return "";
    }
    return "Glycerol %s: may hold methanol and lye. No flame; not for skin, children or toys."
        .formatted(origin == GlycerolOrigin.RECOVERED ? "recovered from oil" : "of unknown origin");
  }

  private Cautions forecast(TrialForecast forecast) {
    Trial trial = forecast.trial();
    recipe(trial.recipe());
    place(trial.casting().place());
    if (trial.seen().hasFault(FaultKind.MOULD)
        || forecast.risks().mould().level() != RiskLevel.LOW) {
      apply.add(Caution.FANS_AND_HEATERS);
      apply.add(Caution.MOULD);
    }
    return this;
  }

  private Cautions recipe(Recipe recipe) {
    if (recipe.glycerol().massKg().value() > 0) {
      glycerol(recipe.glycerol().stock().origin(), Optional.empty());
    }
    if (recipe.vinegar().massKg().value() > 0
        && recipe.vinegar().acidityFraction().value() > STRONG_ACIDITY) {
      apply.add(Caution.LYE_AND_ACID);
    }
    return this;
  }

  private Cautions glycerol(GlycerolOrigin origin, Optional<Alcohol> alcohol) {
    switch (origin) {
      case BOUGHT -> {}
      case UNKNOWN -> apply.add(Caution.GLYCEROL_OF_UNKNOWN_ORIGIN);
      case RECOVERED -> {
        apply.add(
            alcohol.equals(Optional.of(Alcohol.ETHANOL))
                ? Caution.RECOVERED_WITH_ETHANOL
                : Caution.RECOVERED_GLYCEROL);
        apply.addAll(
            List.of(Caution.HEATING_RECOVERED, Caution.UTENSILS, Caution.FANS_AND_HEATERS));
        apply.add(Caution.RULES);
      }
    }
    return this;
  }

  private void acidity(Neutralisation neutralisation) {
    apply.add(Caution.LYE_AND_ACID);
    if (neutralisation.isNearBalance()) {
      apply.add(Caution.UNCERTAIN_PH);
    } else {
      apply.add(neutralisation.netAcidMol().value() > 0 ? Caution.SOUR_JAR : Caution.ALKALINE_JAR);
    }
  }

  private Cautions vinegar(double acidityFraction) {
    if (acidityFraction > 0) {
      apply.add(Caution.VINEGAR);
    }
    if (acidityFraction > STRONG_ACIDITY) {
      apply.add(Caution.LYE_AND_ACID);
    }
    return this;
  }

  private Cautions place(DryingPlace place) {
    OptionalDouble benchK = place.benchTemperatureK();
    if (place.room().warmestK() > HOT_K || benchK.orElse(0) > HOT_K) {
      apply.add(Caution.HOT_PLACE);
    }
    if (RoomWords.draught(place.room()) > FAN_M_PER_S || benchK.isPresent()) {
      apply.add(Caution.FANS_AND_HEATERS);
    }
    return this;
  }

  /** All of them, with others. */
  private List<Caution> and(Caution... others) {
    apply.addAll(List.of(others));
    return List.copyOf(apply);
  }
}
