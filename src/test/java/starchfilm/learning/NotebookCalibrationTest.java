package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.numerics.evidence.Band;

/**
 * Whether the ranges hold as many plates as they say, once a notebook has taught.
 *
 * <p>Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari and Gelman 2018, Validating
 * Bayesian inference algorithms with simulation-based calibration, arXiv:1804.06788, recalled):
 * rooms, starches and plates are drawn from what is believed before any weighing, four plates of a
 * notebook are weighed six times on a scale of half grams, and the fifth is forecast. Its
 * dry-through falls into the 80 % range as often as the range says.
 *
 * <p>The long form tries more notebooks: {@code -Dstarchfilm.notebooks=200}.
 */
class NotebookCalibrationTest {
  private static final int NOTEBOOKS = Integer.getInteger("starchfilm.notebooks", 12);
  private static final long FIRST_SEED = Long.getLong("starchfilm.seed", 1000);
  private static final double STATED = 0.8;
  private static final int TAUGHT_PLATES = 4;
  private static final double[] SIX_WEIGHINGS = {0.1, 0.25, 0.4, 0.55, 0.7, 0.9};

  /** Chance is allowed for: 1 in 1,000 sound programs would fail. */
  private static final double CHANCE = 5e-4;

  @Test
  void theRangeOfAHeldOutPlateHoldsAsManyAsItSays() {
    long within =
        IntStream.range(0, NOTEBOOKS).filter(notebook -> isWithin(FIRST_SEED + notebook)).count();

    System.out.printf("within the 80 %% range: %d of %d held-out plates%n", within, NOTEBOOKS);
    BinomialDistribution sound = new BinomialDistribution(null, NOTEBOOKS, STATED);
    assertThat(within)
        .isBetween(
            (long) sound.inverseCumulativeProbability(CHANCE),
            (long) sound.inverseCumulativeProbability(1 - CHANCE));
  }

  private static boolean isWithin(long seed) {
    SyntheticPlates plates = new SyntheticPlates(seed);
    List<Trial> bare =
        Stream.generate(() -> plates.any("shed", "kitchen")).limit(TAUGHT_PLATES + 1).toList();
    List<ParameterSample> truths = truths(bare, plates);
    List<Trial> taught = new ArrayList<>();
    for (int i = 0; i < TAUGHT_PLATES; i++) {
      taught.add(SyntheticPlates.dried(bare.get(i), truths.get(i), SIX_WEIGHINGS));
    }
    Learner learner = Learner.taughtBy(taught, Path.of(""), () -> {});
    assertThat(learner.leftOut()).isEmpty();

    Trial heldOut = bare.get(TAUGHT_PLATES);
    Band forecast = SyntheticPlates.forecast(heldOut, learner.shared());
    double truthS = SyntheticPlates.dryThroughS(heldOut, truths.get(TAUGHT_PLATES));
    return truthS >= forecast.low() && truthS <= forecast.high();
  }

  /** Shared parts drawn once a notebook, the plates' own parts once a plate. */
  static List<ParameterSample> truths(List<Trial> trials, SyntheticPlates chance) {
    List<PlateModel> plates =
        trials.stream().map(trial -> new PlateModel(trial, List.of())).toList();
    DesignMatrix space = new DesignMatrix(plates.stream().map(PlateModel::key).toList());
    RealVector parts = new ArrayRealVector(space.size());
    for (int i = 0; i < space.size(); i++) {
      parts.setEntry(i, chance.gaussian() * space.priorSds().getEntry(i, i));
    }
    List<ParameterSample> truths = new ArrayList<>();
    for (PlateModel plate : plates) {
      double[] deviations = space.partsOf(plate.key()).operate(parts).toArray();
      for (int i = 0; i < deviations.length; i++) {
        deviations[i] += chance.gaussian() * Math.sqrt(plate.ownVariances()[i]);
      }
      ParameterSample truth = PlateReadings.full(deviations);
      ParameterDistribution model = plate.model(plate.before(SharedParameters.untaught()));
      for (UncertainParameter unfitted :
          List.of(UncertainParameter.PLASTICISER, UncertainParameter.UNEVENNESS)) {
        if (model.sd(unfitted) > 1e-6) {
          truth = truth.with(unfitted, chance.gaussian() * model.sd(unfitted));
        }
      }
      truths.add(truth);
    }
    return truths;
  }
}
