package starchfilm.today;

import java.util.function.ToDoubleFunction;
import starchfilm.drying.Milestone;
import starchfilm.numerics.evidence.Band;

/**
 * The mass that a scale under one plate shows at a moment, and what one more look at it would tell;
 * see {@link ScaleCourse}.
 *
 * @param nowKg film on the plate now (kg); no lighter than it may be at rest
 * @param laterKg the film when a milestone of the plate comes (kg), in the middle case
 * @param restKg the film when it has come to rest (kg), in the middle case
 * @param rangeLeft how much of the range of the dry-through time a weighing now would leave, 0 to
 *     1; 1 where that cannot be known
 */
public record ScaleForecast(
    Band nowKg, ToDoubleFunction<Milestone> laterKg, double restKg, double rangeLeft) {
  /** The film when a milestone of the plate comes (kg), in the middle case. */
  public double kgAt(Milestone milestone) {
    return laterKg.applyAsDouble(milestone);
  }
}
