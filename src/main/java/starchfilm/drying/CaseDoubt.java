package starchfilm.drying;

import starchfilm.drying.uncertainty.Factor;
import starchfilm.drying.uncertainty.FactorModel;
import starchfilm.casting.DryingCase;

/** What one paste, pour and room add to the uncertainty of the factors. */
final class CaseDoubt {
  /** Below this relative spread of the plasticiser its tables are not rebuilt for every draw. */
  private static final double NEGLIGIBLE_PLASTICISER_SD = 0.005;

  private CaseDoubt() {}

  /** The factors with what this paste, pour and room add to their uncertainty. */
  static FactorModel addedTo(FactorModel factors, PreparedCase prepared) {
    DryingCase drying = prepared.drying();
    double thickness = drying.pour().wetThicknessM().sd() / drying.pour().wetThicknessM().value();
    double isotherm =
        prepared
            .material()
            .isotherm()
            .bandFactor(Math.min(RoomDamp.DAMPEST, prepared.resting().at(0)));
    FactorModel model =
        factors
            .widened(Factor.THICKNESS, thickness)
            .widened(Factor.SOLIDS, drying.solidsRelativeSd())
            .widened(
                Factor.ISOTHERM,
                Factor.ISOTHERM.spread() * Math.sqrt(Math.max(0, isotherm * isotherm - 1)));
    return drying.plasticiserRelativeSd() > NEGLIGIBLE_PLASTICISER_SD
        ? model.widened(Factor.PLASTICISER, drying.plasticiserRelativeSd())
        : model;
  }
}
