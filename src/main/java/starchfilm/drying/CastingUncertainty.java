package starchfilm.drying;

import starchfilm.casting.Casting;
import starchfilm.casting.RoomUncertainty;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;

/** What one paste, pour and room add to the uncertainty of the factors. */
final class CastingUncertainty {
  /** Below this relative spread of the plasticiser its tables are not rebuilt for every draw. */
  private static final double NEGLIGIBLE_PLASTICISER_SD = 0.005;

  /**
   * Transfer over a plate in forced flow grows with the square root of the air's speed, so a
   * relative uncertainty of the speed is half as large an uncertainty of the transfer. Source:
   * laminar boundary layer, Incropera et al., Fundamentals of Heat and Mass Transfer, section 7.2
   * (recalled).
   */
  private static final double SPEED_TO_TRANSFER = 0.5;

  private CastingUncertainty() {}

  /** The factors with what this paste, pour and room add to their uncertainty. */
  static ParameterDistribution addedTo(ParameterDistribution factors, PreparedCase prepared) {
    Casting drying = prepared.drying();
    double thickness = drying.pour().wetThicknessM().sd() / drying.pour().wetThicknessM().value();
    double isotherm =
        prepared
            .material()
            .isotherm()
            .bandFactor(Math.min(RoomDamp.DAMPEST, prepared.resting().at(0)));
    RoomUncertainty room = drying.place().uncertainty();
    ParameterDistribution model =
        factors
            .widened(UncertainParameter.AIR_TEMPERATURE, room.temperatureSdK())
            .widened(UncertainParameter.HUMIDITY, room.humiditySd())
            .widened(UncertainParameter.AIR_SIDE, SPEED_TO_TRANSFER * room.speedRelativeSd())
            .widened(UncertainParameter.THICKNESS, thickness)
            .widened(UncertainParameter.SOLIDS, drying.paste().solidsRelativeSd())
            .widened(
                UncertainParameter.ISOTHERM,
                UncertainParameter.ISOTHERM.spread()
                    * Math.sqrt(Math.max(0, isotherm * isotherm - 1)));
    return drying.paste().plasticiserRelativeSd() > NEGLIGIBLE_PLASTICISER_SD
        ? model.widened(UncertainParameter.PLASTICISER, drying.paste().plasticiserRelativeSd())
        : model;
  }
}
