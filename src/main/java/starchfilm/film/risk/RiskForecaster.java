package starchfilm.film.risk;

import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.Casting;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.film.risk.Remedy.Change;

/**
 * Tells how a plate may fail while it dries, why, and which change would help most: every change is
 * made and the plate solved again. Immutable; safe to share.
 */
public final class RiskForecaster {
  /**
   * Nothing is followed longer than this: 30 days. A plate that is wet then has moulded long ago.
   */
  private static final double HORIZON_S = 30 * 86_400.0;

  private final ParameterSample middle;

  /**
   * A forecaster.
   *
   * @param factors what is known of the factors; the middle case is followed
   */
  public RiskForecaster(ParameterDistribution factors) {
    this.middle = factors.mean();
  }

  /**
   * The risks of one plate.
   *
   * @param drying the plate
   * @return cracking, curling and mould
   */
  public PlateRisks forecast(Casting drying) {
    PlateHistory now = PlateHistory.of(drying, middle, HORIZON_S);
    Map<Change, PlateHistory> then = new TreeMap<>();
    RiskLevel crackLevel = CrackRisk.level(now.crackRatio());
    RiskLevel mouldLevel = MouldRisk.level(now.weightedMouldHours());
    if (crackLevel == RiskLevel.LOW && mouldLevel == RiskLevel.LOW) {
      return new PlateRisks(
          crack(drying, now, then), now.stress().curl(), mould(drying, now, then));
    }
    for (Change change : Change.values()) {
      PlateChange.apply(change, drying)
          .ifPresent(
              changed -> then.put(change, PlateHistory.of(changed.drying(), middle, HORIZON_S)));
    }
    return new PlateRisks(crack(drying, now, then), now.stress().curl(), mould(drying, now, then));
  }

  /**
   * The risks of one plate alone, at the cost of one rerun: no causes and no remedies.
   *
   * @param drying the plate
   * @return cracking, curling and mould with their figures and levels
   */
  public PlateRisks withoutRemedies(Casting drying) {
    PlateHistory now = PlateHistory.of(drying, middle, HORIZON_S);
    return new PlateRisks(
        crack(drying, now, Map.of()), now.stress().curl(), mould(drying, now, Map.of()));
  }

  private static CrackRisk crack(Casting drying, PlateHistory now, Map<Change, PlateHistory> then) {
    RiskLevel level = CrackRisk.level(now.crackRatio());
    Optional<Change> best =
        level == RiskLevel.LOW
            ? Optional.empty()
            : best(now, then, PlateHistory::crackRatio, change -> cause(change).isPresent());
    return new CrackRisk(
        now.stress().mayTearAtRim() && level == RiskLevel.LOW ? RiskLevel.WATCH : level,
        now.crackRatio(),
        now.stress().criticalDryThicknessM(),
        now.stress().dryThicknessM(),
        now.stress().worstAtS(),
        now.stress().mayTearAtRim(),
        best.flatMap(RiskForecaster::cause),
        best.flatMap(change -> remedy(drying, change, now, then, PlateHistory::crackRatio)));
  }

  private static MouldRisk mould(Casting drying, PlateHistory now, Map<Change, PlateHistory> then) {
    RiskLevel level = MouldRisk.level(now.weightedMouldHours());
    Optional<Change> best =
        level == RiskLevel.LOW
            ? Optional.empty()
            : best(now, then, PlateHistory::weightedMouldHours, change -> true);
    return new MouldRisk(
        level,
        now.weightedMouldHours(),
        now.growthFromS(),
        best.flatMap(
            change -> remedy(drying, change, now, then, PlateHistory::weightedMouldHours)));
  }

  /** The change that lowers a risk most; empty where none lowers it. */
  private static Optional<Change> best(
      PlateHistory now,
      Map<Change, PlateHistory> then,
      ToDoubleFunction<PlateHistory> risk,
      Predicate<Change> counts) {
    return then.entrySet().stream()
        .filter(tried -> counts.test(tried.getKey()))
        .filter(tried -> risk.applyAsDouble(tried.getValue()) < risk.applyAsDouble(now))
        .min(Comparator.comparingDouble(tried -> risk.applyAsDouble(tried.getValue())))
        .map(Map.Entry::getKey);
  }

  private static Optional<Remedy> remedy(
      Casting drying,
      Change change,
      PlateHistory now,
      Map<Change, PlateHistory> then,
      ToDoubleFunction<PlateHistory> risk) {
    double after = risk.applyAsDouble(Objects.requireNonNull(then.get(change)));
    return PlateChange.apply(change, drying)
        .map(
            changed ->
                new Remedy(change, changed.from(), changed.to(), risk.applyAsDouble(now), after));
  }

  /**
   * What is wrong where a change helps most against cracks; empty for changes that do not count.
   */
  private static Optional<CrackCause> cause(Change change) {
    return switch (change) {
      case MORE_GLYCEROL -> Optional.of(CrackCause.TOO_BRITTLE);
      case POUR_THINNER -> Optional.of(CrackCause.TOO_THICK);
      case DRY_SLOWER -> Optional.of(CrackCause.TOO_FAST);
      case LEVEL_BETTER -> Optional.of(CrackCause.UNEVEN);
      case MORE_AIR, DRIER_ROOM, WARMER_ROOM -> Optional.empty();
    };
  }
}
