package starchfilm.learning;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * The weighings of one plate beside what the model gives for them.
 *
 * <p>One object serves one thread. The last few cases asked for are kept, for the optimiser asks
 * for each of them several times.
 */
final class PlateReadings {
  /** Steps of the numeric derivatives, in the textbook's standard deviations. */
  private static final double DERIVATIVE_STEP = 0.15;

  /**
   * Slopes serve as far as this from where they were taken, in the textbook's standard deviations;
   * they change by a per cent or so over it.
   */
  private static final double SAME_SLOPES = 0.03;

  private static final int KEPT_CASES = 4;

  private final PlateSimulation simulation;
  private final Runnable requireWanted;
  private final double[] timesS;
  private final double[] massesKg;
  private final double[] sdKg;
  private final Map<List<Double>, double[]> lastCases =
      new LinkedHashMap<>(2 * KEPT_CASES, 0.75f, true);
  private double[] lastSlopesAt = new double[0];
  private double[][] lastSlopes = new double[0][];

  PlateReadings(Casting drying, List<Weighing> weighings, Runnable requireWanted) {
    this.requireWanted = requireWanted;
    int count = weighings.size();
    timesS = new double[count];
    massesKg = new double[count];
    sdKg = new double[count];
    ModelMiss miss = ModelMiss.of(drying);
    for (int i = 0; i < count; i++) {
      Weighing weighing = weighings.get(i);
      timesS[i] = weighing.timeS();
      massesKg[i] = weighing.filmMassKg();
      sdKg[i] = Math.hypot(weighing.massSdKg(), miss.sdKg(weighing.filmMassKg()));
    }
    simulation = new PlateSimulation(drying, timesS);
  }

  int count() {
    return timesS.length;
  }

  PlateSimulation simulation() {
    return simulation;
  }

  double timeS(int reading) {
    return timesS[reading];
  }

  double massKg(int reading) {
    return massesKg[reading];
  }

  double sdKg(int reading) {
    return sdKg[reading];
  }

  /** What the scale would show in a case (kg). */
  double[] expectedKg(double[] deviations) {
    List<Double> wanted = Arrays.stream(deviations).boxed().toList();
    double[] known = lastCases.get(wanted);
    if (known != null) {
      return known;
    }
    double[] fresh = new double[timesS.length];
    requireWanted.run();
    simulation.filmMassesKg(full(deviations), fresh);
    lastCases.put(wanted, fresh);
    if (lastCases.size() > KEPT_CASES) {
      lastCases.remove(lastCases.keySet().iterator().next());
    }
    return fresh;
  }

  /**
   * Derivatives of {@link #expectedKg}: one row a reading, one column a fitted factor; those of a
   * case very near are given again.
   */
  double[][] slopes(double[] deviations) {
    if (lastSlopesAt.length == 0 || distance(deviations, lastSlopesAt) > SAME_SLOPES) {
      lastSlopes = freshSlopes(deviations);
      lastSlopesAt = deviations.clone();
    }
    return lastSlopes;
  }

  private static double distance(double[] one, double[] other) {
    double most = 0;
    for (int i = 0; i < one.length; i++) {
      most = Math.max(most, Math.abs(one[i] - other[i]) / VarianceShares.factor(i).spread());
    }
    return most;
  }

  private double[][] freshSlopes(double[] deviations) {
    double[] here = expectedKg(deviations);
    double[][] slopes = new double[timesS.length][VarianceShares.COUNT];
    double[] there = new double[timesS.length];
    for (int factor = 0; factor < VarianceShares.COUNT; factor++) {
      double[] moved = deviations.clone();
      double step = DERIVATIVE_STEP * VarianceShares.factor(factor).spread();
      moved[factor] += step;
      requireWanted.run();
      simulation.filmMassesKg(full(moved), there);
      for (int reading = 0; reading < timesS.length; reading++) {
        slopes[reading][factor] = (there[reading] - here[reading]) / step;
      }
    }
    return slopes;
  }

  static ParameterSample full(double[] fitted) {
    return ParameterSample.of(Arrays.copyOf(fitted, UncertainParameter.values().length));
  }
}
