package starchfilm.drying;

import starchfilm.casting.DryingCase;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;

/** What one paste, pour and room add to the uncertainty of the factors. */
final class CastingUncertainty {
  /** Below this relative spread of the plasticiser its tables are not rebuilt for every draw. */
  private static final double NEGLIGIBLE_PLASTICISER_SD = 0.005;

  private CastingUncertainty() {}

  /** The factors with what this paste, pour and room add to their uncertainty. */
  static ParameterDistribution addedTo(ParameterDistribution factors, PreparedCase prepared) {
    DryingCase drying = prepared.drying();
    double thickness = drying.pour().wetThicknessM().sd() / drying.pour().wetThicknessM().value();
    double isotherm =
        prepared
            .material()
            .isotherm()
            .bandFactor(Math.min(RoomDamp.DAMPEST, prepared.resting().at(0)));
    ParameterDistribution model =
        factors
            .widened(UncertainParameter.THICKNESS, thickness)
            .widened(UncertainParameter.SOLIDS, drying.solidsRelativeSd())
            .widened(
                UncertainParameter.ISOTHERM,
                UncertainParameter.ISOTHERM.spread()
                    * Math.sqrt(Math.max(0, isotherm * isotherm - 1)));
    return drying.plasticiserRelativeSd() > NEGLIGIBLE_PLASTICISER_SD
        ? model.widened(UncertainParameter.PLASTICISER, drying.plasticiserRelativeSd())
        : model;
  }
}
