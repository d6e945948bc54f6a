package starchfilm.forecast;

import java.util.List;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;

/**
 * The knowledge of the drying factors for the plates of one trial.
 *
 * @param factors what is known
 * @param wholly true where it holds already what the plate's own paste, pour and room leave
 *     uncertain, as after its weighings; false where a forecast has yet to add that
 * @param weighings how many weighings of it and of other plates of its pour were taken in
 * @param questions what is odd about its weighings
 */
public record PlateParameters(
    ParameterDistribution factors,
    boolean wholly,
    int weighings,
    List<WeighingQuestion> questions) {
  public PlateParameters {
    questions = List.copyOf(questions);
  }

  /** The knowledge without any weighing of the plate. */
  public PlateParameters(ParameterDistribution factors, boolean wholly) {
    this(factors, wholly, 0, List.of());
  }

  /** A forecaster with these factors. */
  public DryingForecaster forecaster() {
    return wholly
        ? DryingForecaster.ofOnePlate(factors, DryingForecaster.DRAWS)
        : new DryingForecaster(factors, DryingForecaster.DRAWS);
  }
}
