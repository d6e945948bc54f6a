package starchfilm.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import starchfilm.advice.NextTrialSearch.Suspected;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.drying.Milestone;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.numerics.units.Named;

/** Puts a next trial together: the steps found, and what the model expects of them. */
record NextTrials(RuleBook book, TrialKnowledge knowledge) {
  /** A plate without faults is left alone for less than this share of its drying time (judged). */
  private static final double SOONER_BY = 0.1;

  /**
   * The changes that answer what is suspected; empty where none helps enough.
   *
   * @param now the trial as it was cast
   */
  Optional<NextTrial> against(List<Suspected> suspected, ForecastCache now, List<Trial> notebook) {
    return new NextTrialSearch(book, places(notebook), suspected)
        .find()
        .map(
            found ->
                next(
                    found.steps(),
                    found.scenes().get(0).outlook(),
                    causes(found.steps(), suspected),
                    aims(found, suspected),
                    now));
  }

  /**
   * The one change that has a good trial dry sooner and brings no new trouble; empty where none
   * does.
   */
  Optional<NextTrial> sooner(TrialForecast forecast, List<Trial> notebook) {
    FaultContext scene = FaultContext.of(forecast, new ForecastCache(forecast.trial(), knowledge));
    double now = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    List<Change> quicker = new ArrayList<>(book.answersTo(Cause.POURED_TOO_THICK));
    quicker.addAll(book.answersTo(Cause.SLOW_ROOM));
    for (Change adjustment : quicker) {
      for (AdvisedStep step : AdvisedStep.of(adjustment, scene, book, places(notebook))) {
        FaultContext changed = step.appliedTo(List.of(scene)).get(0);
        double then = changed.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
        if (then <= (1 - SOONER_BY) * now
            && NextTrialSearch.newTrouble(book, scene, changed) == 0) {
          return Optional.of(
              next(List.of(step), changed.outlook(), List.of(), List.of(), scene.outlook()));
        }
      }
    }
    return Optional.empty();
  }

  private NextTrial next(
      List<AdvisedStep> steps,
      ForecastCache outlook,
      List<String> against,
      List<String> aims,
      ForecastCache now) {
    return new NextTrial(
        steps.stream().map(AdvisedStep::change).toList(),
        steps.stream().map(AdvisedStep::words).toList(),
        outlook.setup(),
        steps.stream().flatMapToDouble(step -> step.waitUntilS().stream()).findFirst(),
        against,
        aims,
        Expectation.ofRange(now),
        Expectation.ofRange(outlook));
  }

  private List<String> causes(List<AdvisedStep> steps, List<Suspected> suspected) {
    Set<String> causes = new LinkedHashSet<>();
    for (Suspected each : suspected) {
      for (Suspicion suspicion : each.suspicions()) {
        if (answered(suspicion, steps)) {
          causes.add(Named.of(suspicion.cause()));
        }
      }
    }
    return List.copyOf(causes);
  }

  private boolean answered(Suspicion suspicion, List<AdvisedStep> steps) {
    List<Change> answers = book.answersTo(suspicion.cause());
    return steps.stream().anyMatch(step -> answers.contains(step.change()));
  }

  /** What the steps do to the measures that the causes they answer were held against. */
  private List<String> aims(NextTrialSearch.State found, List<Suspected> suspected) {
    Set<String> told = new HashSet<>();
    List<String> aims = new ArrayList<>();
    for (int i = 0; i < suspected.size(); i++) {
      FaultContext before = suspected.get(i).scene();
      FaultContext after = found.scenes().get(i);
      for (Suspicion suspicion : suspected.get(i).suspicions()) {
        Measure measure = suspicion.rule().heldAgainst();
        if (measure.isOfModel() && answered(suspicion, found.steps()) && told.add(measure.name())) {
          aims.add(measure.moved(before, after));
        }
      }
    }
    return aims;
  }

  /** The rooms of the notebook, each as it was in its best-rated trial, or else the last. */
  private static List<DryingPlace> places(List<Trial> notebook) {
    Map<String, Trial> best = new LinkedHashMap<>();
    for (Trial trial : notebook) {
      if (trial.hasHistory()) {
        best.merge(trial.casting().place().name(), trial, NextTrials::better);
      }
    }
    return best.values().stream().map(trial -> trial.casting().place()).toList();
  }

  private static Trial better(Trial earlier, Trial later) {
    return later.seen().rating().orElse(0) >= earlier.seen().rating().orElse(0) ? later : earlier;
  }
}
