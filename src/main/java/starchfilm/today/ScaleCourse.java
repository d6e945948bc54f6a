package starchfilm.today;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Weighing;
import starchfilm.change.Remedies;
import starchfilm.change.Rerun;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.film.risk.PlateRisks;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.ModelMiss;
import starchfilm.numerics.evidence.Band;

/**
 * The masses that a scale under one plate shows from the pour until the film is at rest, worked out
 * once and asked at any moment.
 *
 * <p>To first order in the independent parts z of what is uncertain: a mass m and the logarithm of
 * the dry-through time t move by h and g a standard deviation of each part, so that m is known to
 * {@code |h|}, and a weighing that is itself good to s leaves of the range of t the share {@code
 * sqrt(1 - (g·h)²/(|g|² (|h|² + s²)))}: the conditional normal distribution. Source: Anderson 2003,
 * An Introduction to Multivariate Statistical Analysis, section 2.5 (recalled).
 *
 * <p>Immutable; safe to share.
 */
public final class ScaleCourse {
  /** Step of the numeric derivatives, in standard deviations. */
  private static final double STEP = 0.5;

  /** A film is at rest so long after it was dry through (s). */
  private static final double TO_REST_S = 3 * DAY_S;

  private static final int POINTS = 64;

  /** A reading of a kitchen scale that shows grams (kg): a rectangle one step wide. */
  private static final double KITCHEN_SCALE_SD_KG = 1e-3 / Math.sqrt(12);

  private final double[] timesS;
  private final double[] middleKg;
  private final List<double[]> stepsKg;
  private final double[] logDrySlopes;
  private final DryingForecast drying;
  private final double scaleSdKg;
  private final ModelMiss miss;
  private final Optional<Rerun> relief;

  private ScaleCourse(TrialForecast forecast, double sd) {
    drying = forecast.drying();
    Casting casting = forecast.trial().casting();
    PlateParameters known = forecast.weighed().known();
    relief =
        Remedies.underWay(
            casting,
            forecast.risks(),
            drying.peelableS().middle(),
            changed -> PlateRisks.of(changed, known.factors()));
    scaleSdKg = sd;
    miss = ModelMiss.of(casting);
    double lastS =
        Math.max(
            cameS(Milestone.DRY_THROUGH),
            Math.min(drying.dryThroughS().high(), DryingForecaster.HORIZON_S));
    timesS = new double[POINTS + 1];
    for (int i = 0; i < POINTS; i++) {
      timesS[i] = lastS * i / (POINTS - 1);
    }
    timesS[POINTS] = lastS + TO_REST_S;
    PlateSimulation plate = new PlateSimulation(casting, timesS);
    ParameterDistribution cases = known.wholly() ? known.factors() : plate.doubted(known.factors());
    middleKg = masses(plate, cases.mean());
    double logDry = logDryS(plate, cases.mean());
    List<double[]> moved = new ArrayList<>();
    List<Double> slopes = new ArrayList<>();
    for (ParameterSample step : cases.steps(STEP)) {
      if (!step.equals(cases.mean())) {
        moved.add(masses(plate, step));
        slopes.add((logDryS(plate, step) - logDry) / STEP);
      }
    }
    stepsKg = List.copyOf(moved);
    logDrySlopes = slopes.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * The course of a plate.
   *
   * @param forecast its trial as the plate shows it
   * @return what a scale shows
   */
  public static ScaleCourse of(TrialForecast forecast) {
    return new ScaleCourse(
        forecast,
        forecast.trial().seen().weighings().stream()
            .mapToDouble(Weighing::massSdKg)
            .max()
            .orElse(KITCHEN_SCALE_SD_KG));
  }

  /** The change that helps most where the plate will mould; empty where it will not. */
  Optional<Rerun> relief() {
    return relief;
  }

  /**
   * What the scale shows at a moment, and later.
   *
   * @param nowS the moment (s since the pour)
   * @return the masses; those of moments that never come as of the end of what is looked at
   */
  ScaleForecast at(double nowS) {
    double nowKg = at(middleKg, nowS);
    double massOfMass = 0;
    double dryOfDry = 0;
    double massOfDry = 0;
    for (int k = 0; k < logDrySlopes.length; k++) {
      double h = (at(stepsKg.get(k), nowS) - nowKg) / STEP;
      massOfMass += h * h;
      dryOfDry += logDrySlopes[k] * logDrySlopes[k];
      massOfDry += logDrySlopes[k] * h;
    }
    double weighingSd = Math.hypot(scaleSdKg, miss.sdKg(nowKg));
    double told = massOfDry * massOfDry / (dryOfDry * (massOfMass + weighingSd * weighingSd));
    return new ScaleForecast(
        noLighterThanAtRest(Band.normal(nowKg, Math.sqrt(massOfMass))),
        milestone -> at(middleKg, cameS(milestone)),
        middleKg[POINTS],
        told >= 0 && told <= 1 ? Math.sqrt(1 - told) : 1);
  }

  /** When a milestone comes, none before those that come first (s), in the middle case. */
  private double cameS(Milestone last) {
    return Stream.of(Milestone.values())
        .filter(one -> one.compareTo(last) <= 0)
        .mapToDouble(one -> Math.min(drying.timeS(one).middle(), DryingForecaster.HORIZON_S))
        .max()
        .orElseThrow();
  }

  /** A film that loses no more water has lost it all: what is left is what its solids hold. */
  private Band noLighterThanAtRest(Band nowKg) {
    double restKg = middleKg[POINTS];
    double square = 0;
    for (double[] moved : stepsKg) {
      square += Math.pow((moved[POINTS] - restKg) / STEP, 2);
    }
    double leastKg = Math.min(nowKg.middle(), Band.normal(restKg, Math.sqrt(square)).low());
    // Not less than nothing, either, however coarse the scale is.
    double low = Math.max(Math.min(0, nowKg.middle()), Math.max(leastKg, nowKg.low()));
    return new Band(low, nowKg.middle(), nowKg.high());
  }

  private double at(double[] massesKg, double timeS) {
    return new LinearInterpolator()
        .interpolate(timesS, massesKg)
        .value(Math.max(0, Math.min(timesS[POINTS], timeS)));
  }

  private double[] masses(PlateSimulation plate, ParameterSample deviations) {
    double[] masses = new double[timesS.length];
    plate.filmMassesKg(deviations, masses);
    return masses;
  }

  private static double logDryS(PlateSimulation plate, ParameterSample deviations) {
    return Math.log(plate.milestoneS(Milestone.DRY_THROUGH, Spot.THICK_SPOT, deviations));
  }
}
