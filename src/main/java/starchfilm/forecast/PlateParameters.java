package starchfilm.forecast;

import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;

/**
 * What is known of the drying factors for the plates of one trial.
 *
 * @param factors what is known
 * @param wholly true where it holds already what the plate's own paste, pour and room leave
 *     uncertain, as after its weighings; false where a forecast has yet to add that
 * @param weighings how many of the plate's own weighings were taken in
 */
public record PlateParameters(ParameterDistribution factors, boolean wholly, int weighings) {
  /**
   * A forecaster with these factors.
   *
   * @param draws how many likely cases to solve
   * @return the forecaster
   */
  public DryingForecaster forecaster(int draws) {
    return wholly
        ? DryingForecaster.ofOnePlate(factors, draws)
        : new DryingForecaster(factors, draws);
  }
}
