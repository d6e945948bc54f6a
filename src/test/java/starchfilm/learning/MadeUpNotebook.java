package starchfilm.learning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/** Whole notebooks made up from a seed: plates of a few rooms, weighed, and strips of some. */
final class MadeUpNotebook {
  private static final String[] ROOMS = {"kitchen", "Shed", "attic \"north\""};

  private final Random random;
  private final SyntheticPlates plates;
  private final Path folder;
  private int made;

  MadeUpNotebook(long seed, Path folder) {
    random = new Random(seed);
    plates = new SyntheticPlates(seed);
    this.folder = folder;
  }

  List<Trial> trials(int count) {
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      trials.add(trial());
    }
    return trials;
  }

  /** A plate whose factors all depart from the textbook, weighed one to six times. */
  Trial trial() {
    ParameterSample truth = ParameterSample.NONE;
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      truth = truth.with(factor, 0.7 * factor.spread() * random.nextGaussian());
    }
    double[] shares = new double[1 + random.nextInt(6)];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = (i + 0.2 + 0.6 * random.nextDouble()) / shares.length;
    }
    Trial dried = SyntheticPlates.dried(plates.any(ROOMS), truth, shares);
    List<PullTest> pulls = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      pulls.add(strip(1e6 * Math.exp(1.5 + 0.4 * random.nextGaussian()), 0.3 + i * 0.05));
    }
    return pulled(dried, folder.resolve("trial " + ++made + ".json"), pulls);
  }

  /** A strip 10 mm wide and 0.1 mm thick that bore a stress. */
  static PullTest strip(double strengthPa, double stretch) {
    return new PullTest(strengthPa * 10e-3 * 0.1e-3, 10e-3, 0.1e-3, OptionalDouble.of(stretch));
  }

  /** The same trial in a file of its own, with strips. */
  static Trial pulled(Trial trial, Path file, List<PullTest> pulls) {
    return SyntheticPlates.with(trial, file, trial.seen().weighings(), pulls);
  }
}
