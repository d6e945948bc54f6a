package starchfilm.today;

import static starchfilm.numerics.units.Units.DAY_S;

import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.forecast.PlateParameters;
import starchfilm.learning.ModelMiss;
import starchfilm.numerics.evidence.Estimate;

/**
 * What a scale under one plate shows, and what one more look at it would tell.
 *
 * <p>To first order in the independent parts z of what is uncertain: a mass m and the logarithm of
 * the dry-through time t move by h and g a standard deviation of each part, so that m is known to
 * {@code |h|}, and a weighing that is itself good to s leaves of the range of t the share {@code
 * sqrt(1 - (g·h)²/(|g|² (|h|² + s²)))}: the conditional normal distribution. Source: Anderson 2003,
 * An Introduction to Multivariate Statistical Analysis, section 2.5 (recalled).
 *
 * @param nowKg film on the plate now (kg)
 * @param peelableKg the film when it is peelable (kg), in the middle case
 * @param dryKg the film when it is dry through (kg), in the middle case
 * @param restKg the film when it has come to rest (kg), in the middle case
 * @param rangeLeft how much of the range of the dry-through time a weighing now would leave, 0 to
 *     1; 1 where that cannot be told
 */
public record ScaleForecast(
    Estimate nowKg, double peelableKg, double dryKg, double restKg, double rangeLeft) {
  /** Step of the numeric derivatives, in standard deviations. */
  private static final double STEP = 0.5;

  /** A film is at rest so long after it was dry through (s). */
  private static final double TO_REST_S = 3 * DAY_S;

  private static final int NOW = 0;

  /**
   * What the scale shows of a plate.
   *
   * @param nowS the moment (s since the pour)
   * @param peelableS when it is peelable in the middle case (s); may be infinite
   * @param dryS when it is dry through in the middle case (s); may be infinite
   * @param scaleSdKg standard uncertainty of a weighing (kg)
   * @return the masses; those of moments that never come as of the end of what is looked at
   */
  static ScaleForecast of(
      Casting casting,
      PlateParameters known,
      double nowS,
      double peelableS,
      double dryS,
      double scaleSdKg) {
    double peelS = Math.min(peelableS, DryingForecaster.HORIZON_S);
    double endS = Math.max(peelS, Math.min(dryS, DryingForecaster.HORIZON_S));
    PlateSimulation plate =
        new PlateSimulation(casting, Math.min(nowS, DryingForecaster.HORIZON_S));
    ParameterDistribution cases = known.wholly() ? known.factors() : plate.doubted(known.factors());
    double[] later = new double[3];
    new PlateSimulation(casting, peelS, endS, endS + TO_REST_S).filmMassesKg(cases.mean(), later);
    double[] mass = new double[1];
    plate.filmMassesKg(cases.mean(), mass);
    double nowKg = mass[NOW];
    double logDry = logDryS(plate, cases.mean());
    double massOfMass = 0;
    double dryOfDry = 0;
    double massOfDry = 0;
    for (ParameterSample step : cases.steps(STEP)) {
      plate.filmMassesKg(step, mass);
      double h = (mass[NOW] - nowKg) / STEP;
      double g = (logDryS(plate, step) - logDry) / STEP;
      massOfMass += h * h;
      dryOfDry += g * g;
      massOfDry += g * h;
    }
    double weighingSd = Math.hypot(scaleSdKg, ModelMiss.of(casting).sdKg(nowKg));
    double told = massOfDry * massOfDry / (dryOfDry * (massOfMass + weighingSd * weighingSd));
    return new ScaleForecast(
        new Estimate(nowKg, Math.sqrt(massOfMass)),
        later[0],
        later[1],
        later[2],
        told >= 0 && told <= 1 ? Math.sqrt(1 - told) : 1);
  }

  private static double logDryS(PlateSimulation plate, ParameterSample deviations) {
    return Math.log(plate.milestoneS(Milestone.DRY_THROUGH, Spot.THICK_SPOT, deviations));
  }
}
