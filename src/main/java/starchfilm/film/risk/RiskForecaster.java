package starchfilm.film.risk;

import starchfilm.casting.Casting;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;

/** Tells how a plate may fail while it dries. Immutable; safe to share. */
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
    PlateHistory history = PlateHistory.of(drying, middle, HORIZON_S);
    StressHistory stress = history.stress();
    RiskLevel level = CrackRisk.level(history.crackRatio());
    return new PlateRisks(
        new CrackRisk(
            stress.mayTearAtRim() && level == RiskLevel.LOW ? RiskLevel.WATCH : level,
            history.crackRatio(),
            stress.criticalDryThicknessM(),
            stress.dryThicknessM(),
            stress.worstAtS(),
            stress.mayTearAtRim()),
        stress.curl(),
        new MouldRisk(
            MouldRisk.level(history.weightedMouldHours()),
            history.weightedMouldHours(),
            history.growthFromS()));
  }
}
