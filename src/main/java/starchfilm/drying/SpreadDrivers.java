package starchfilm.drying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * What the range of a forecast comes from.
 *
 * <p>The logarithm of the thick spot's dry-through is regressed on the deviations of the draws; a
 * factor's share is the variance its own term explains. Source: standardised regression
 * coefficients, Saltelli et al. 2008, Global Sensitivity Analysis, section 1.2.5 (recalled). Where
 * fewer than half of the draws ever dry, nothing is said.
 */
final class SpreadDrivers {
  /** A regression on fewer draws a factor says little. */
  private static final int ROWS_PER_FACTOR = 3;

  private SpreadDrivers() {}

  static List<SpreadDriver> of(
      ParameterDistribution model, ParameterSample[] cases, SpotSolution[] thick) {
    List<UncertainParameter> varied = new ArrayList<>();
    for (UncertainParameter factor : UncertainParameter.values()) {
      if (model.sd(factor) > 1e-6) {
        varied.add(factor);
      }
    }
    double[] times = DryingForecaster.times(thick, Milestone.DRY_THROUGH);
    if (Quantiles.finiteShare(times) < 0.5 || varied.isEmpty()) {
      return List.of();
    }
    double[] logTimes = new double[times.length];
    double[][] scaled = new double[times.length][varied.size()];
    int rows = 0;
    for (int draw = 0; draw < times.length; draw++) {
      if (Double.isFinite(times[draw]) && times[draw] > 0) {
        logTimes[rows] = Math.log(times[draw]);
        for (int k = 0; k < varied.size(); k++) {
          UncertainParameter factor = varied.get(k);
          scaled[rows][k] = (cases[draw].of(factor) - model.mean().of(factor)) / model.sd(factor);
        }
        rows++;
      }
    }
    if (rows < varied.size() * ROWS_PER_FACTOR) {
      return List.of();
    }
    return shares(varied, Arrays.copyOf(logTimes, rows), Arrays.copyOf(scaled, rows));
  }

  private static List<SpreadDriver> shares(
      List<UncertainParameter> varied, double[] logTimes, double[][] scaled) {
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    double[] coefficients;
    try {
      regression.newSampleData(logTimes, scaled);
      coefficients = regression.estimateRegressionParameters();
    } catch (SingularMatrixException e) {
      // Factors that learning has tied together cannot be distinguished.
      return List.of();
    }
    double total = 0;
    for (int k = 0; k < varied.size(); k++) {
      total += coefficients[k + 1] * coefficients[k + 1];
    }
    List<SpreadDriver> drivers = new ArrayList<>();
    for (int k = 0; k < varied.size(); k++) {
      double part = coefficients[k + 1] * coefficients[k + 1];
      drivers.add(new SpreadDriver(varied.get(k), total == 0 ? 0 : part / total));
    }
    drivers.sort(Comparator.comparingDouble(SpreadDriver::share).reversed());
    return drivers;
  }
}
