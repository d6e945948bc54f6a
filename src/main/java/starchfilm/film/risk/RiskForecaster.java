package starchfilm.film.risk;

import starchfilm.casting.Casting;
import starchfilm.drying.PlateCourse;
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
    PlateCourse course = PlateCourse.of(drying, middle, HORIZON_S);
    StressHistory stress = StressHistory.of(drying, course);
    return new PlateRisks(
        stress.crack(), stress.curl(), MouldRisk.of(drying, middle, course.thick()));
  }
}
