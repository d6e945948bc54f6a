package starchfilm.forecast;

import java.util.List;
import java.util.function.ToDoubleFunction;
import starchfilm.drying.CurvePoint;
import starchfilm.numerics.evidence.Band;

/**
 * Reads a drying curve between its points, and in grams on the plate.
 *
 * @param trial whose curve it is
 * @param curve its points, in order of time
 */
public record CurveReading(TrialForecast trial, List<CurvePoint> curve) {
  /** Reads the curve as it is known now. */
  public CurveReading(TrialForecast trial) {
    this(trial, trial.drying().curve());
  }

  /** Reads the curve as it was forecast at the pour. */
  public static CurveReading atThePour(TrialForecast trial) {
    return new CurveReading(trial, trial.dryingAtThePour().curve());
  }

  /**
   * Average moisture at a moment, along straight lines between the points.
   *
   * @param timeS time since the pour (s)
   * @return the nominal band (kg/kg); the curve's last where the moment lies past its end
   */
  public Band moistureAt(double timeS) {
    return new Band(
        at(timeS, point -> point.nominal().low()),
        at(timeS, point -> point.nominal().middle()),
        at(timeS, point -> point.nominal().high()));
  }

  /**
   * One of the curve's figures at a moment, along straight lines between the points.
   *
   * @param timeS time since the pour (s)
   * @param figure which figure of a point
   * @return the figure; the curve's last where the moment lies past its end
   */
  public double at(double timeS, ToDoubleFunction<CurvePoint> figure) {
    CurvePoint before = curve.get(0);
    for (CurvePoint after : curve) {
      if (after.timeS() >= timeS) {
        double length = after.timeS() - before.timeS();
        double share = length > 0 ? (timeS - before.timeS()) / length : 1;
        double from = figure.applyAsDouble(before);
        return from + share * (figure.applyAsDouble(after) - from);
      }
      before = after;
    }
    return figure.applyAsDouble(before);
  }

  /**
   * Film on one plate at a moisture.
   *
   * @param waterKgPerKgDry moisture (kg/kg)
   * @return kg, without the plate
   */
  public double massKg(double waterKgPerKgDry) {
    return trial.drySolidsKgPerPlate() * (1 + waterKgPerKgDry);
  }

  /**
   * Film on the plate.
   *
   * @param waterKgPerKgDry a band of its moisture
   * @return its mass (kg)
   */
  public Band massKg(Band waterKgPerKgDry) {
    return waterKgPerKgDry.map(this::massKg);
  }

  /**
   * Moisture of a film that was weighed.
   *
   * @param massKg film on the plate (kg)
   * @return kg water per kg dry solids; below 0 where the film weighs less than its solids
   */
  public double moisture(double massKg) {
    return massKg / trial.drySolidsKgPerPlate() - 1;
  }
}
