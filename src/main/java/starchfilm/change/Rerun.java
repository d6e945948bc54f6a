package starchfilm.change;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import starchfilm.film.risk.PlateRisks;

/**
 * A step, and the risks of the plate solved again with it.
 *
 * @param step the step
 * @param risks the risks then
 */
public record Rerun(ChangeStep step, PlateRisks risks) {
  /** The one that lowers a risk most; empty where none lowers it. */
  static Optional<Rerun> best(
      Stream<Rerun> reruns, PlateRisks now, ToDoubleFunction<PlateRisks> risk) {
    ToDoubleFunction<Rerun> then = rerun -> risk.applyAsDouble(rerun.risks());
    return reruns
        .filter(rerun -> then.applyAsDouble(rerun) < risk.applyAsDouble(now))
        .min(Comparator.comparingDouble(then));
  }
}
