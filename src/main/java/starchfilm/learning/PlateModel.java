package starchfilm.learning;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.MatrixUtils;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * One plate with its weighings, and what is uncertain about it alone. One object serves one thread
 * at a time.
 */
final class PlateModel {
  /**
   * Relative spread of the thickness where the paste was weighed: the plate's area, the paste left
   * at its rim, and the steam of a hot pour before it lies still. The heat of 40 K would drive off
   * 7 % of a paste as steam; how much of it does is doubtful by a quarter. Judged, no source.
   */
  private static final double WEIGHED_POUR_SD = 0.02;

  private final PlateKey key;
  private final PlateReadings readings;
  private final double[] ownVariances;
  private final double[] unfittedVariances;

  PlateModel(Trial trial, List<Weighing> weighings) {
    this(trial, weighings, () -> {});
  }

  /** A plate whose fit ends where {@code requireWanted}, called before each simulation, throws. */
  PlateModel(Trial trial, List<Weighing> weighings, Runnable requireWanted) {
    Casting drying = trial.casting();
    key = PlateKey.of(trial, drying.composition());
    readings = new PlateReadings(drying, weighings, requireWanted);
    double[][] doubted =
        readings.simulation().doubted(ownShare(drying.pour().weighedKg().isPresent())).covariance();
    double[] variances =
        IntStream.range(0, doubted.length).mapToDouble(i -> doubted[i][i]).toArray();
    ownVariances = Arrays.copyOf(variances, VarianceShares.COUNT);
    unfittedVariances = Arrays.copyOfRange(variances, VarianceShares.COUNT, variances.length);
  }

  /** The plate's own share of the textbook's spread. */
  static ParameterDistribution ownShare(boolean pourWeighed) {
    int all = UncertainParameter.values().length;
    double[] variances = Arrays.copyOf(ownVariances(pourWeighed), all);
    return ParameterDistribution.learnt(
        new double[all], MatrixUtils.createRealDiagonalMatrix(variances).getData());
  }

  /** The same as variances of the fitted factors. */
  static double[] ownVariances(boolean pourWeighed) {
    double[] variances = new double[VarianceShares.COUNT];
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      variances[i] =
          factor == UncertainParameter.THICKNESS && pourWeighed
              ? WEIGHED_POUR_SD * WEIGHED_POUR_SD
              : VarianceShares.variance(factor, VarianceShares.of(factor).plate());
    }
    return variances;
  }

  PlateKey key() {
    return key;
  }

  PlateReadings readings() {
    return readings;
  }

  double[] ownVariances() {
    return ownVariances.clone();
  }

  /** What is known of the plate before its weighings, from what the others taught. */
  Normal before(SharedParameters shared) {
    return shared.of(key).widened(ownVariances);
  }

  /** What would be known of it if the shared parts were exactly at their means. */
  Normal beforeGivenMeans(SharedParameters shared) {
    Normal known = shared.of(key);
    return new Normal(known.mean(), MatrixUtils.createRealDiagonalMatrix(ownVariances));
  }

  /** The distribution of the parameters as a forecast takes it. */
  ParameterDistribution model(Normal known) {
    return known.model(unfittedVariances);
  }
}
