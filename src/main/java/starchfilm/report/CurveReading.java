package starchfilm.report;

import java.util.List;
import starchfilm.drying.CurvePoint;
import starchfilm.evidence.Band;
import starchfilm.trial.TrialForecast;

/** Reads a drying curve between its points, and in grams on the plate. */
final class CurveReading {
  private final TrialForecast trial;
  private final List<CurvePoint> curve;

  CurveReading(TrialForecast trial) {
    this.trial = trial;
    this.curve = trial.drying().curve();
  }

  /**
   * Moisture at a moment, along straight lines between the points.
   *
   * @param timeS time since the pour (s)
   * @return the nominal band (kg/kg); the curve's last where the moment lies past its end
   */
  Band moistureAt(double timeS) {
    CurvePoint before = curve.get(0);
    for (CurvePoint after : curve) {
      if (after.timeS() >= timeS) {
        return between(before, after, timeS);
      }
      before = after;
    }
    return before.nominal();
  }

  /**
   * Film on one plate at a moisture.
   *
   * @param waterKgPerKgDry moisture (kg/kg)
   * @return kg, without the plate
   */
  double massKg(double waterKgPerKgDry) {
    return trial.drySolidsKgPerPlate() * (1 + waterKgPerKgDry);
  }

  /**
   * Moisture of a film that was weighed.
   *
   * @param massKg film on the plate (kg)
   * @return kg water per kg dry solids; below 0 where the film weighs less than its solids
   */
  double moisture(double massKg) {
    return massKg / trial.drySolidsKgPerPlate() - 1;
  }

  private static Band between(CurvePoint before, CurvePoint after, double timeS) {
    double length = after.timeS() - before.timeS();
    double share = length > 0 ? (timeS - before.timeS()) / length : 1;
    return new Band(
        mix(before.nominal().low(), after.nominal().low(), share),
        mix(before.nominal().middle(), after.nominal().middle(), share),
        mix(before.nominal().high(), after.nominal().high(), share));
  }

  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }
}
