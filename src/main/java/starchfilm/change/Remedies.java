package starchfilm.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.Casting;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.CastingForecaster;

/**
 * The change that would lower each risk of a plate most; empty at a low risk, or where none lowers
 * it. Every change is made by a step that shows, and the plate solved again.
 *
 * @param crack against cracking; its measure is energy over toughness
 * @param mould against mould; its measure is weighted hours
 */
public record Remedies(Optional<Remedy> crack, Optional<Remedy> mould) {
  /** None was looked for. */
  public static final Remedies NONE = new Remedies(Optional.empty(), Optional.empty());

  private record Rerun(Relief relief, ChangeStep step, PlateRisks risks) {}

  /** The best changes. */
  static Remedies of(CastingForecaster forecaster, Casting casting, PlateRisks now) {
    boolean cracks = now.crack().level() != RiskLevel.LOW;
    boolean moulds = now.mould().level() != RiskLevel.LOW;
    List<Rerun> reruns = new ArrayList<>();
    for (Relief relief : Relief.values()) {
      if (moulds || (cracks && relief.helpsAgainstCracks())) {
        relief
            .change()
            .clearStep(casting)
            .ifPresent(step -> reruns.add(new Rerun(relief, step, forecaster.risks(step.after()))));
      }
    }
    return new Remedies(
        cracks
            ? best(
                Relief::helpsAgainstCracks,
                reruns,
                now,
                risks -> risks.crack().energyOverToughness())
            : Optional.empty(),
        moulds
            ? best(relief -> true, reruns, now, risks -> risks.mould().weightedHours())
            : Optional.empty());
  }

  private static Optional<Remedy> best(
      Predicate<Relief> counts,
      List<Rerun> reruns,
      PlateRisks now,
      ToDoubleFunction<PlateRisks> risk) {
    double before = risk.applyAsDouble(now);
    return reruns.stream()
        .filter(rerun -> counts.test(rerun.relief()))
        .map(
            rerun ->
                new Remedy(
                    rerun.relief(),
                    rerun.step().from(),
                    rerun.step().to(),
                    before,
                    risk.applyAsDouble(rerun.risks())))
        .filter(remedy -> remedy.riskAfter() < before)
        .min(Comparator.comparingDouble(Remedy::riskAfter));
  }
}
