package starchfilm.learning;

import java.util.Collection;
import java.util.List;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The shared parts after what some plates taught: a normal distribution.
 *
 * <p>{@code Lambda = Lambda_0 + sum A' S A}, {@code mean = Lambda^-1 sum A' eta}, with the prior
 * precision Lambda_0, a plate's parts A, and its likelihood's precision S and pull eta, added up in
 * {@link SummedLikelihood}. Immutable.
 */
record SharedParameters(DesignMatrix space, RealVector mean, RealMatrix covariance) {
  static SharedParameters after(Collection<PlateLikelihood> likelihoods) {
    return SummedLikelihood.of(likelihoods).factors();
  }

  /** From precision and pull in parts divided by their prior standard deviations. */
  static SharedParameters of(DesignMatrix space, RealMatrix precision, RealVector pull) {
    Normal scaled = Normal.of(precision, pull);
    RealMatrix sds = space.priorSds();
    RealMatrix covariance = sds.multiply(scaled.covariance()).multiply(sds);
    return new SharedParameters(space, sds.operate(scaled.mean()), Normal.symmetric(covariance));
  }

  /** Nothing learnt: every part at its prior. */
  static SharedParameters untaught() {
    return after(List.of());
  }

  /** These parts part of the way to others of the same space, with the others' covariance. */
  SharedParameters movedTowards(SharedParameters others, double share) {
    RealVector step = others.mean.subtract(mean).mapMultiply(share);
    return new SharedParameters(space, mean.add(step), others.covariance);
  }

  /** The shared deviations of a plate, those of a room or kind not seen yet included. */
  Normal of(PlateKey plate) {
    return seenThrough(space.partsOf(plate)).widened(space.variancesOfStrangers(plate));
  }

  /** Any combination of the parts. */
  Normal seenThrough(RealMatrix mapping) {
    return new Normal(
        mapping.operate(mean), mapping.multiply(covariance).multiply(mapping.transpose()));
  }
}
