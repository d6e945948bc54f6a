package starchfilm.learning;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import starchfilm.film.FilmProperty;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * The evidence of one film's strips on one property.
 *
 * @param file the trial's file, from the folder of the workshop file
 * @param logFactor mean of the logarithm of measured over forecast, with the standard uncertainty
 *     that the scatter of the strips leaves
 */
record StripLikelihood(
    String file,
    Map<StarchKind, Double> starchShares,
    FilmProperty property,
    int strips,
    Estimate logFactor) {
  private static final double STUDENT_FREEDOM = 4;
  private static final int ROUNDS = 100;

  StripLikelihood {
    starchShares = new TreeMap<>(starchShares);
    PlateKey.requireWhole(starchShares);
    if (strips < 1) {
      throw new IllegalArgumentException("a strip likelihood needs a strip");
    }
  }

  /**
   * A mean that one wild strip cannot pull far, and what each strip counts for.
   *
   * <p>Student's t with 4 degrees of freedom by reweighting, from the median on; as the weighings
   * are fitted.
   *
   * @param mean the mean with its standard uncertainty {@code sd/sqrt(sum of weights)}, no weight
   *     counted above 1
   */
  record SteadyMean(Estimate mean, List<Double> weights) {
    static SteadyMean of(double[] figures, double sd) {
      double middle = new Median().evaluate(figures);
      double[] weights = new double[figures.length];
      for (int round = 0; round < ROUNDS; round++) {
        double sum = 0;
        double weighted = 0;
        for (int i = 0; i < figures.length; i++) {
          double r = (figures[i] - middle) / sd;
          weights[i] = (STUDENT_FREEDOM + 1) / (STUDENT_FREEDOM + r * r);
          sum += weights[i];
          weighted += weights[i] * figures[i];
        }
        middle = weighted / sum;
      }
      double counted = Arrays.stream(weights).map(weight -> Math.min(1, weight)).sum();
      return new SteadyMean(
          new Estimate(middle, sd / Math.sqrt(counted)), Arrays.stream(weights).boxed().toList());
    }
  }
}
