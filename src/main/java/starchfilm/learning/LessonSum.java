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
final class LessonSum {
  private final SharedSpace space;
  private final RealMatrix precision;
  private final RealVector pull;

  private LessonSum(SharedSpace space, RealMatrix precision, RealVector pull) {
    this.space = space;
    this.precision = precision;
    this.pull = pull;
  }

  /** Nothing learnt yet of the parts of a space. */
  static LessonSum nothing(SharedSpace space) {
    return new LessonSum(
        space,
        MatrixUtils.createRealIdentityMatrix(space.size()),
        new ArrayRealVector(space.size()));
  }

  /** What lessons of plates of a space teach. */
  static LessonSum of(SharedSpace space, Collection<PlateLesson> lessons) {
    LessonSum sum = nothing(space);
    for (PlateLesson lesson : lessons) {
      sum = sum.with(lesson, 1);
    }
    return sum;
  }

  /** What lessons teach, in the space that their own plates span. */
  static LessonSum of(Collection<PlateLesson> lessons) {
    return of(new SharedSpace(lessons.stream().map(PlateLesson::plate).toList()), lessons);
  }

  LessonSum plus(PlateLesson lesson) {
    return with(lesson, 1);
  }

  /** The sum without a lesson that is in it. */
  LessonSum minus(PlateLesson lesson) {
    return with(lesson, -1);
  }

  private LessonSum with(PlateLesson lesson, int times) {
    RealMatrix parts = SharedFactors.scaled(space, space.partsOf(lesson.plate()));
    RealMatrix added = parts.transpose().multiply(lesson.precision()).multiply(parts);
    return new LessonSum(
        space,
        precision.add(added.scalarMultiply(times)),
        pull.add(parts.transpose().operate(lesson.pull()).mapMultiply(times)));
  }

  SharedFactors factors() {
    return SharedFactors.of(space, precision, pull);
  }
}
