package starchfilm.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  /** Each names what makes a plate crack: brittle film, a thick or uneven pour, hasty drying. */
  private static final Set<Change> AGAINST_CRACKS =
      EnumSet.of(
          Change.POUR_THINNER,
          Change.LEVEL_THE_PLATE,
          Change.MORE_GLYCEROL,
          Change.COVER_THE_PLATE);

  private static final Set<Change> AGAINST_MOULD =
      EnumSet.of(
          Change.POUR_THINNER,
          Change.LEVEL_THE_PLATE,
          Change.MORE_GLYCEROL,
          Change.COVER_THE_PLATE,
          Change.FAN,
          Change.DRIER_ROOM,
          Change.WARMER_ROOM);

  private record Rerun(ChangeStep step, PlateRisks risks) {}

  /** The best changes. */
  static Remedies of(CastingForecaster forecaster, Casting casting, PlateRisks now) {
    boolean cracks = now.crack().level() != RiskLevel.LOW;
    boolean moulds = now.mould().level() != RiskLevel.LOW;
    Set<Change> tried = EnumSet.noneOf(Change.class);
    tried.addAll(cracks ? AGAINST_CRACKS : Set.of());
    tried.addAll(moulds ? AGAINST_MOULD : Set.of());
    List<Rerun> reruns = new ArrayList<>();
    for (Change change : tried) {
      change
          .clearStep(casting)
          .ifPresent(step -> reruns.add(new Rerun(step, forecaster.risks(step.after()))));
    }
    return new Remedies(
        cracks
            ? best(AGAINST_CRACKS, reruns, now, risks -> risks.crack().energyOverToughness())
            : Optional.empty(),
        moulds
            ? best(AGAINST_MOULD, reruns, now, risks -> risks.mould().weightedHours())
            : Optional.empty());
  }

  private static Optional<Remedy> best(
      Set<Change> counts, List<Rerun> reruns, PlateRisks now, ToDoubleFunction<PlateRisks> risk) {
    double before = risk.applyAsDouble(now);
    return reruns.stream()
        .filter(rerun -> counts.contains(rerun.step().change()))
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
