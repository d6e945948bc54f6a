package starchfilm.learning;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.PlateSimulation.Steps;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * The weighings of one plate beside what the model gives for them.
 *
 * <p>One object serves one thread. The last few cases asked for are kept, for the optimiser asks
 * for each of them several times.
 */
final class PlateReadings {
  /**
   * Steps of the numeric derivatives, in the textbook's standard deviations: small, for a case that
   * is solved with the steps in time of another must turn where that one turns.
   */
  private static final double DERIVATIVE_STEP = 1e-3;

  /**
   * Slopes serve as far as this from where they were taken, in the textbook's standard deviations;
   * against 0.1, what the demo teaches moves by at most a twentieth of its uncertainty.
   */
  private static final double SAME_SLOPES = 0.3;

  private static final int KEPT_CASES = 4;
  private static final int KNOWN_LEVEL = 0;
  private static final int LEVELS = 4;

  private final PlateSimulation simulation;
  private final Runnable requireWanted;
  private final List<FittedReading> readings;
  private final Map<List<Double>, Solved> lastCases =
      new LinkedHashMap<>(2 * KEPT_CASES, 0.75f, true);
  private double[] lastSlopesAt = new double[0];
  private double[][] lastSlopes = new double[0][];

  /**
   * A weighing as it is fitted.
   *
   * @param sdKg standard uncertainty of its mass, with what the model misses (kg)
   * @param level which unknown level it stands on; {@link #KNOWN_LEVEL} for none
   * @param trusted whether it counts in full however far it is off
   */
  record FittedReading(double timeS, double massKg, double sdKg, int level, boolean trusted) {}

  /** What the scale would show in a case (kg), and the steps in time it was solved with. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Solved(double[] massesKg, Steps steps) {}

  PlateReadings(Casting drying, List<Weighing> weighings, Runnable requireWanted) {
    this(drying, weighings, Double.POSITIVE_INFINITY, false, requireWanted);
  }

  /**
   * The weighings of a plate.
   *
   * @param newLevelS from this time on (s) masses are off by an unknown amount, the same for all
   * @param trustConfirmed whether what its maker confirmed counts in full however far it is off
   */
  PlateReadings(
      Casting drying,
      List<Weighing> weighings,
      double newLevelS,
      boolean trustConfirmed,
      Runnable requireWanted) {
    this.requireWanted = requireWanted;
    ModelMiss miss = ModelMiss.of(drying);
    readings =
        weighings.stream()
            .map(
                weighing ->
                    new FittedReading(
                        weighing.timeS(),
                        weighing.filmMassKg(),
                        Math.hypot(weighing.massSdKg(), miss.sdKg(weighing.filmMassKg())),
                        (weighing.tared() ? KNOWN_LEVEL : 1)
                            + (weighing.timeS() < newLevelS ? 0 : 2),
                        trustConfirmed && weighing.confirmed()))
            .toList();
    simulation =
        new PlateSimulation(drying, readings.stream().mapToDouble(FittedReading::timeS).toArray());
  }

  int count() {
    return readings.size();
  }

  PlateSimulation simulation() {
    return simulation;
  }

  FittedReading get(int reading) {
    return readings.get(reading);
  }

  /** What was noted less what the scale would show in a case (kg). */
  double[] missesKg(double[] deviations) {
    double[] misses = expectedKg(deviations).clone();
    for (int i = 0; i < misses.length; i++) {
      misses[i] = get(i).massKg() - misses[i];
    }
    return misses;
  }

  /**
   * Takes the weighted mean off the readings of each unknown level. Least squares over what is left
   * are those with the level as one more unknown (Frisch and Waugh 1933, Econometrica 1:387; Lovell
   * 1963, J. Am. Stat. Assoc. 58:993; recalled).
   *
   * @param values one a reading, such as {@link #missesKg} or a column of {@link #slopes}
   * @param weights what each reading counts for
   * @return the values with the means taken off
   */
  double[] centred(double[] values, RealVector weights) {
    double[] centred = values.clone();
    for (int level = KNOWN_LEVEL + 1; level < LEVELS; level++) {
      double sum = 0;
      double of = 0;
      for (int i = 0; i < values.length; i++) {
        if (get(i).level() == level) {
          double weight = weights.getEntry(i) / Math.pow(get(i).sdKg(), 2);
          sum += weight * values[i];
          of += weight;
        }
      }
      for (int i = 0; of > 0 && i < values.length; i++) {
        centred[i] -= get(i).level() == level ? sum / of : 0;
      }
    }
    return centred;
  }

  /** What the scale would show in a case (kg). */
  double[] expectedKg(double[] deviations) {
    return solved(deviations).massesKg();
  }

  private Solved solved(double[] deviations) {
    List<Double> wanted = Arrays.stream(deviations).boxed().toList();
    Solved known = lastCases.get(wanted);
    if (known != null) {
      return known;
    }
    double[] masses = new double[count()];
    requireWanted.run();
    Solved fresh = new Solved(masses, simulation.filmMassesKg(full(deviations), masses));
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
    Solved here = solved(deviations);
    double[][] slopes = new double[count()][VarianceShares.COUNT];
    double[] there = new double[count()];
    for (int factor = 0; factor < VarianceShares.COUNT; factor++) {
      double[] moved = deviations.clone();
      double step = DERIVATIVE_STEP * VarianceShares.factor(factor).spread();
      moved[factor] += step;
      requireWanted.run();
      simulation.filmMassesKg(full(moved), here.steps(), there);
      for (int reading = 0; reading < count(); reading++) {
        slopes[reading][factor] = (there[reading] - here.massesKg()[reading]) / step;
      }
    }
    return slopes;
  }

  static ParameterSample full(double[] fitted) {
    return ParameterSample.of(Arrays.copyOf(fitted, UncertainParameter.values().length));
  }
}
