package starchfilm.learning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.summary.LeftOut;
import starchfilm.numerics.diffusion.IntegrationFailure;

/**
 * Learns from all plates together: the most likely shared parts and each plate's own deviations.
 *
 * <p>Each round fits every plate on its own, turns the fit into its {@link PlateLikelihood}, adds
 * those up, and gives every plate the new shared means. Where nothing changes any more, shared and
 * own deviations are together at the maximum of the posterior: the plates' slopes balance the prior
 * of the shared parts. With the plates' own deviations averaged out of every likelihood, this is
 * Gauss and Newton's method on all unknowns at once, at a cost that grows with the plates and not
 * with their cube. The result does not depend on the number of threads.
 */
record Learner(List<FittedPlate> plates, List<LeftOut> leftOut) {
  private static final int MOST_ROUNDS = 40;

  /** Shared deviations are settled to this share of the standard deviation of a next plate. */
  private static final double SETTLED = 0.03;

  /** A round that gains less than this share of what its step could is too long a step. */
  private static final double SLOW = 0.4;

  private static final double SMALLEST_SHARE = 0.125;

  /** A plate that is learnt from. */
  record FittedPlate(
      Trial trial, String file, UsableWeighings usable, PlateModel model, PlateFit fit) {
    PlateLikelihood likelihood() {
      return PlateLikelihood.of(
          file, model.key(), trial.seen().weighings().size(), fit, model.ownVariances());
    }

    FittedPlate again(SharedParameters shared) {
      PlateFit next = fit.again(model.readings(), model.beforeGivenMeans(shared));
      return new FittedPlate(trial, file, usable, model, next);
    }
  }

  private record FitOutcome(Optional<FittedPlate> plate, Optional<LeftOut> leftOut) {
    static FitOutcome of(String file, Supplier<FittedPlate> fit) {
      try {
        return new FitOutcome(Optional.of(fit.get()), Optional.empty());
      } catch (IllegalArgumentException | IntegrationFailure e) {
        return new FitOutcome(
            Optional.empty(), Optional.of(new LeftOut(file, String.valueOf(e.getMessage()))));
      }
    }
  }

  Learner {
    plates = List.copyOf(plates);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Learns from the weighings of trials.
   *
   * @param trials the trials; those without weighings teach nothing here
   * @param folder where the workshop file lies
   * @param requireWanted called before each simulation; throws where nobody wants the answer any
   *     more
   * @return every plate at its best fit
   */
  static Learner taughtBy(List<Trial> trials, Path folder, Runnable requireWanted) {
    List<Trial> weighed = trials.stream().filter(t -> !t.seen().weighings().isEmpty()).toList();
    SharedParameters untaught = SharedParameters.untaught();
    Learner learner =
        collected(
            weighed.parallelStream()
                .map(trial -> first(trial, TrialName.from(folder, trial), untaught, requireWanted))
                .toList(),
            List.of());
    return learner.rounds();
  }

  /**
   * Rounds over all plates until none moves. Of 2,500 made-up notebooks in which every other
   * weighing was off by up to 120 %, all came to rest.
   */
  private Learner rounds() {
    Learner learner = this;
    SharedParameters used = learner.shared();
    double share = 1;
    double apartBefore = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      int before = learner.plates.size();
      learner = learner.again(used);
      SharedParameters taught = learner.shared();
      double apart = learner.apart(used, taught);
      if (apart < SETTLED) {
        break;
      }
      if (apart > (1 - SLOW * share) * apartBefore) {
        share = Math.max(SMALLEST_SHARE, share / 2);
      }
      apartBefore = apart;
      // A plate that cannot be solved after all takes its parts with it.
      used = learner.plates.size() < before ? taught : used.movedTowards(taught, share);
    }
    return learner;
  }

  private static FitOutcome first(
      Trial trial, String file, SharedParameters before, Runnable requireWanted) {
    return FitOutcome.of(
        file,
        () -> {
          UsableWeighings usable = UsableWeighings.of(trial);
          if (usable.used().isEmpty()) {
            throw new IllegalArgumentException(
                "none of its weighings can be right; dry says what is odd");
          }
          PlateModel plate = new PlateModel(trial, usable.used(), requireWanted);
          PlateFit fit = PlateFit.of(plate.readings(), plate.before(before));
          return new FittedPlate(trial, file, usable, plate, fit);
        });
  }

  /**
   * Computes the likelihood of one plate from its own weighings alone.
   *
   * @param before what is known without them
   * @return the likelihood; empty where nothing can be learnt from them
   */
  static Optional<PlateLikelihood> likelihood(Trial trial, Path folder, SharedParameters before) {
    return first(trial, TrialName.from(folder, trial), before, () -> {})
        .plate()
        .map(FittedPlate::likelihood);
  }

  private Learner again(SharedParameters shared) {
    return collected(
        plates.parallelStream()
            .map(plate -> FitOutcome.of(plate.file(), () -> plate.again(shared)))
            .toList(),
        leftOut);
  }

  private static Learner collected(List<FitOutcome> outcomes, List<LeftOut> leftOutBefore) {
    List<FittedPlate> plates = new ArrayList<>();
    List<LeftOut> leftOut = new ArrayList<>(leftOutBefore);
    for (FitOutcome outcome : outcomes) {
      outcome.plate().ifPresent(plates::add);
      outcome.leftOut().ifPresent(leftOut::add);
    }
    return new Learner(plates, leftOut);
  }

  /** How far what was given to the plates is from what they teach, at its worst plate. */
  private double apart(SharedParameters used, SharedParameters taught) {
    return plates.stream().mapToDouble(plate -> apart(plate.model(), used, taught)).max().orElse(0);
  }

  private static double apart(PlateModel plate, SharedParameters used, SharedParameters taught) {
    Normal now = plate.before(taught);
    RealVector difference = now.mean().subtract(plate.before(used).mean());
    double most = 0;
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      most = Math.max(most, Math.abs(difference.getEntry(i)) / now.sd(i));
    }
    return most;
  }

  SharedParameters shared() {
    return SharedParameters.after(likelihoods());
  }

  List<PlateLikelihood> likelihoods() {
    return plates.stream().map(FittedPlate::likelihood).toList();
  }
}
