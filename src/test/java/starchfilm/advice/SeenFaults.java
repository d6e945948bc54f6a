package starchfilm.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Wanted;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;

/** Faults seen on a plain plate, of which every field was noted. */
final class SeenFaults {
  private static final DryingForecaster DRYING =
      new DryingForecaster(ParameterDistribution.textbook(), DryingForecaster.DRAWS);

  private SeenFaults() {}

  static FaultContext on(Casting casting, ObservedFault fault) {
    Trial trial = poured(casting, fault);
    return FaultContext.of(
        trial, fault, DRYING.forecast(casting), new ForecastCache(trial, SameForAll.TEXTBOOK));
  }

  static FaultContext on(Casting casting) {
    return on(casting, fault(FaultKind.UNEVEN));
  }

  /** A fault all over the plate, without a time. */
  static ObservedFault fault(FaultKind kind) {
    return new ObservedFault(kind, FaultPlace.ALL, OptionalDouble.empty(), Optional.empty());
  }

  static Trial poured(Casting casting, ObservedFault... faults) {
    Trial trial = MadeUpTrials.with(List.of(faults), List.of());
    return poured(casting, trial.seen());
  }

  static Trial poured(Casting casting, Observations seen) {
    Trial trial = MadeUpTrials.with(List.of(), List.of());
    return new Trial(
        trial.file(),
        trial.name(),
        true,
        Optional.empty(),
        Wanted.NOTHING,
        trial.pouredAt(),
        trial.recipe(),
        casting,
        seen,
        List.of());
  }

  /** A plate with what its maker makes of it, 1 to 5, if anything. */
  static Trial rated(Casting casting, OptionalInt rating, FaultKind... faults) {
    List<ObservedFault> seen = Stream.of(faults).map(SeenFaults::fault).toList();
    return poured(casting, Castings.observed(List.of(), seen, List.of(), rating));
  }

  static TrialForecast forecast(Trial trial) {
    return new TrialForecaster(SameForAll.TEXTBOOK).forecast(trial);
  }

  /** The same written down and never cast. */
  static Trial recipeOf(Trial cast) {
    return new Trial(
        cast.file(),
        "a recipe",
        true,
        Optional.empty(),
        Wanted.NOTHING,
        Optional.empty(),
        cast.recipe(),
        cast.casting(),
        Castings.observed(List.of(), List.of(), List.of(), OptionalInt.empty()),
        List.of());
  }

  /** What the table reads of a cause. */
  static CauseReading read(Cause cause, FaultContext scene) {
    return RuleBook.packed().rules().stream()
        .filter(rule -> rule.cause() == cause)
        .findFirst()
        .orElseThrow()
        .read(scene);
  }

  static Casting usual(Setting setting, double figure) {
    return setting.set(Castings.USUAL, figure);
  }
}
