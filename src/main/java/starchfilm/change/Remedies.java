package starchfilm.change;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
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

  /** What may lower a risk; each of them may lower that of mould. */
  private static final List<Change> TRIED =
      List.of(
          Change.POUR_THINNER,
          Change.LEVEL_THE_PLATE,
          Change.MORE_GLYCEROL,
          Change.COVER_THE_PLATE,
          Change.FAN,
          Change.DRIER_ROOM,
          Change.WARMER_ROOM);

  /** Quicker drying cracks a film rather than saves it. */
  private static final Set<Change> QUICKER =
      EnumSet.of(Change.FAN, Change.DRIER_ROOM, Change.WARMER_ROOM);

  private record Rerun(ChangeStep step, PlateRisks risks) {}

  /** The best changes. */
  static Remedies of(CastingForecaster forecaster, Casting casting, PlateRisks now) {
    boolean cracks = now.crack().level() != RiskLevel.LOW;
    boolean moulds = now.mould().level() != RiskLevel.LOW;
    List<Rerun> reruns =
        TRIED.stream()
            .filter(change -> moulds || (cracks && !QUICKER.contains(change)))
            .flatMap(change -> change.clearStep(casting).stream())
            .map(step -> new Rerun(step, forecaster.risks(step.after())))
            .toList();
    return new Remedies(
        cracks
            ? best(
                reruns.stream().filter(rerun -> !QUICKER.contains(rerun.step().change())),
                now,
                risks -> risks.crack().energyOverToughness())
            : Optional.empty(),
        moulds
            ? best(reruns.stream(), now, risks -> risks.mould().weightedHours())
            : Optional.empty());
  }

  private static Optional<Remedy> best(
      Stream<Rerun> reruns, PlateRisks now, ToDoubleFunction<PlateRisks> risk) {
    double before = risk.applyAsDouble(now);
    return reruns
        .map(
            rerun ->
                new Remedy(
                    rerun.step().change(),
                    rerun.step().from(),
                    rerun.step().to(),
                    before,
                    risk.applyAsDouble(rerun.risks())))
        .filter(remedy -> remedy.riskAfter() < before)
        .min(Comparator.comparingDouble(Remedy::riskAfter));
  }
}
