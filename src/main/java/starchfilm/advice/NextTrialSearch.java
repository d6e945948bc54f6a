package starchfilm.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Spot;
import starchfilm.change.Change;
import starchfilm.drying.Milestone;

/**
 * Finds the one or two changes that take most of the trouble away.
 *
 * <p>Every adjustment that answers a named cause is tried step by step and the model rerun. A step
 * is worth what it takes off the trouble of the faults seen, each cause counted by its support,
 * less the new trouble it brings (cracking, mould, brittleness, stickiness, a frail edge), a longer
 * wait, and a little for every further step, so that the mildest change that does it wins. A second
 * change is added only where the first leaves much and the second takes much of it away. The
 * weights are judged, no source. The same notebook always gives the same answer.
 */
record NextTrialSearch(RuleBook book, List<DryingPlace> otherPlaces, List<Suspected> suspected) {
  private static final double MOST_TROUBLE = 3;
  private static final double TOLERABLE = 0.15;
  private static final double TOLERATED = 0.3;
  private static final double SIDE_EFFECT_WEIGHT = 2;
  private static final double WAIT_WEIGHT = 0.2;
  private static final double STEP_WEIGHT = 0.03;
  private static final double LEAST_GAIN = 0.15;
  private static final double SECOND_IF_LEFT = 0.4;
  private static final double SECOND_GAIN = 0.3;

  /** A fault's scene and what explains it. */
  record Suspected(FaultContext scene, List<Suspicion> suspicions) {}

  /**
   * A state of the search: the steps so far, one or two where it is done, and the scenes after
   * them.
   */
  record State(List<AdvisedStep> steps, List<FaultContext> scenes, double worth) {}

  /** What to take; empty where nothing helps enough. */
  Optional<State> find() {
    List<FaultContext> now = suspected.stream().map(Suspected::scene).toList();
    State start = new State(List.of(), now, -trouble(now));
    Optional<State> first = best(start);
    if (first.isEmpty() || first.get().worth() - start.worth() < LEAST_GAIN) {
      return Optional.empty();
    }
    State one = first.get();
    if (trouble(one.scenes()) < SECOND_IF_LEFT) {
      return first;
    }
    return best(one).filter(two -> two.worth() - one.worth() >= SECOND_GAIN).or(() -> first);
  }

  private Optional<State> best(State from) {
    State best = null;
    for (Change adjustment : candidates(from)) {
      double cost = STEP_WEIGHT * from.steps().size();
      for (AdvisedStep step : AdvisedStep.of(adjustment, from.scenes().get(0), book, otherPlaces)) {
        List<FaultContext> scenes = step.appliedTo(from.scenes());
        double atMost = -trouble(scenes) - cost;
        cost += STEP_WEIGHT;
        // New trouble only costs, and is dear to compute: not where the step has lost already.
        if (best != null && atMost <= best.worth()) {
          continue;
        }
        double worth = atMost - newTrouble(book, suspected.get(0).scene(), scenes.get(0));
        if (best == null || worth > best.worth()) {
          List<AdvisedStep> steps = new ArrayList<>(from.steps());
          steps.add(step);
          best = new State(List.copyOf(steps), scenes, worth);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private Set<Change> candidates(State from) {
    Set<Change> candidates = EnumSet.noneOf(Change.class);
    for (Suspected each : suspected) {
      for (Suspicion suspicion : each.suspicions()) {
        candidates.addAll(book.answersTo(suspicion.cause()));
      }
    }
    for (AdvisedStep step : from.steps()) {
      candidates.removeIf(other -> other.thing() == step.change().thing());
    }
    return candidates;
  }

  /** Trouble of the faults seen, each cause counted by its share of the support. */
  private double trouble(List<FaultContext> scenes) {
    double sum = 0;
    for (int i = 0; i < scenes.size(); i++) {
      List<Suspicion> suspicions = suspected.get(i).suspicions();
      double support = suspicions.stream().mapToDouble(Suspicion::support).sum();
      for (Suspicion suspicion : suspicions) {
        double trouble = Math.min(MOST_TROUBLE, suspicion.rule().trouble(scenes.get(i)).orElse(0));
        if (trouble < TOLERABLE) {
          continue;
        }
        sum += suspicion.support() / support * trouble;
      }
    }
    return sum;
  }

  /** What a changed set-up brings that was not there before. */
  static double newTrouble(RuleBook book, FaultContext before, FaultContext changed) {
    double sum = 0;
    for (Measure measure : book.measures().stream().filter(Measure::isSideEffect).toList()) {
      double tolerated = Math.max(TOLERATED, measure.trouble(before));
      sum += Math.max(0, measure.trouble(changed) - tolerated);
    }
    double wait =
        changed.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH)
            / before.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    return SIDE_EFFECT_WEIGHT * sum + WAIT_WEIGHT * Math.max(0, Math.log(wait));
  }
}
