package starchfilm.learning;

import java.util.Collection;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What some lessons teach together of the shared parts: their precisions and pulls added up, so
 * that one lesson can be left out again without counting the others anew. Immutable.
 *
 * <p>Parts are counted in their prior standard deviations, where the prior precision is the unit
 * matrix and nothing can be singular.
 */
final class SummedLikelihood {
  private final DesignMatrix space;
  private final RealMatrix precision;
  private final RealVector pull;

  private SummedLikelihood(DesignMatrix space, RealMatrix precision, RealVector pull) {
    this.space = space;
    this.precision = precision;
    this.pull = pull;
  }

  /** Nothing learnt yet of the parts of a space. */
  static SummedLikelihood nothing(DesignMatrix space) {
    return new SummedLikelihood(
        space,
        MatrixUtils.createRealIdentityMatrix(space.size()),
        new ArrayRealVector(space.size()));
  }

  /** What lessons of plates of a space teach. */
  static SummedLikelihood of(DesignMatrix space, Collection<PlateLikelihood> lessons) {
    SummedLikelihood sum = nothing(space);
    for (PlateLikelihood lesson : lessons) {
      sum = sum.with(lesson, 1);
    }
    return sum;
  }

  /** What lessons teach, in the space that their own plates span. */
  static SummedLikelihood of(Collection<PlateLikelihood> lessons) {
    return of(new DesignMatrix(lessons.stream().map(PlateLikelihood::plate).toList()), lessons);
  }

  SummedLikelihood plus(PlateLikelihood lesson) {
    return with(lesson, 1);
  }

  /** The sum without a lesson that is in it. */
  SummedLikelihood minus(PlateLikelihood lesson) {
    return with(lesson, -1);
  }

  private SummedLikelihood with(PlateLikelihood lesson, int times) {
    RealMatrix parts = SharedParameters.scaled(space, space.partsOf(lesson.plate()));
    RealMatrix added = parts.transpose().multiply(lesson.precision()).multiply(parts);
    return new SummedLikelihood(
        space,
        precision.add(added.scalarMultiply(times)),
        pull.add(parts.transpose().operate(lesson.pull()).mapMultiply(times)));
  }

  SharedParameters factors() {
    return SharedParameters.of(space, precision, pull);
  }
}
