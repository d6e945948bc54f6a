package starchfilm.drying;

import starchfilm.casting.Casting;
import starchfilm.casting.RoomUncertainty;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.numerics.evidence.Estimate;

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

  /** The factors with what is added, the middle case telling the activity it comes to rest at. */
  static ParameterDistribution addedTo(
      ParameterDistribution factors, PreparedCase prepared, SpotSolution middle) {
    Casting drying = prepared.drying();
    double thickness = drying.pour().wetThicknessM().sd() / drying.pour().wetThicknessM().value();
    double isotherm = prepared.material().isotherm().bandFactor(middle.restingActivity);
    RoomUncertainty room = drying.place().uncertainty();
    ParameterDistribution model =
        factors
            .widened(UncertainParameter.AIR_TEMPERATURE, room.temperatureSdK())
            .widened(UncertainParameter.HUMIDITY, room.humiditySd())
            .widened(UncertainParameter.AIR_SIDE, SPEED_TO_TRANSFER * room.speedRelativeSd())
            .widened(UncertainParameter.UNEVENNESS, drying.pour().unevennessSdOfLog())
            .widened(UncertainParameter.THICKNESS, Estimate.sdOfLog(thickness))
            .widened(UncertainParameter.SOLIDS, Estimate.sdOfLog(drying.paste().solidsRelativeSd()))
            .widened(
                UncertainParameter.ISOTHERM,
                UncertainParameter.ISOTHERM.spread()
                    * Math.sqrt(Math.max(0, isotherm * isotherm - 1)));
    return drying.paste().plasticiserRelativeSd() > NEGLIGIBLE_PLASTICISER_SD
        ? model.widened(
            UncertainParameter.PLASTICISER,
            Estimate.sdOfLog(drying.paste().plasticiserRelativeSd()))
        : model;
  }
}
