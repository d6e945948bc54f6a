package starchfilm.learning;

import java.util.Collection;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The joint evidence of some plates on the shared parts: their precisions and pulls added up, so
 * that one plate can be left out again without counting the others anew. Immutable.
 *
 * <p>Parts are counted in their prior standard deviations, where the prior precision is the unit
 * matrix and nothing can be singular.
 */
record SummedLikelihood(DesignMatrix space, RealMatrix precision, RealVector pull) {
  /** Nothing learnt yet of the parts of a space. */
  static SummedLikelihood nothing(DesignMatrix space) {
    return new SummedLikelihood(
        space,
        MatrixUtils.createRealIdentityMatrix(space.size()),
        new ArrayRealVector(space.size()));
  }

  /** What plates of a space teach. */
  static SummedLikelihood of(DesignMatrix space, Collection<PlateLikelihood> likelihoods) {
    SummedLikelihood sum = nothing(space);
    for (PlateLikelihood likelihood : likelihoods) {
      sum = sum.plus(likelihood);
    }
    return sum;
  }

  /** What plates teach, in the space that they span. */
  static SummedLikelihood of(Collection<PlateLikelihood> likelihoods) {
    return of(
        new DesignMatrix(likelihoods.stream().map(PlateLikelihood::plate).toList()), likelihoods);
  }

  SummedLikelihood plus(PlateLikelihood likelihood) {
    return with(likelihood, 1);
  }

  /** The sum without a plate that is in it. */
  SummedLikelihood minus(PlateLikelihood likelihood) {
    return with(likelihood, -1);
  }

  private SummedLikelihood with(PlateLikelihood likelihood, int times) {
    RealMatrix parts = space.partsOf(likelihood.plate()).multiply(space.priorSds());
    RealMatrix added = parts.transpose().multiply(likelihood.precision()).multiply(parts);
    return new SummedLikelihood(
        space,
        precision.add(added.scalarMultiply(times)),
        pull.add(parts.transpose().operate(likelihood.pull()).mapMultiply(times)));
  }

  SharedParameters factors() {
    return SharedParameters.of(space, precision, pull);
  }
}
