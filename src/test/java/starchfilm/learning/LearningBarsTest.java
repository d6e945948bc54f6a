package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * What learning is worth: a room that exchanges 0.6 times what the textbook says with a film that
 * lets water through 1.5 times as fast, and a scale that shows half grams.
 */
class LearningBarsTest {
  private static final int NOTEBOOKS = 7;
  private static final ParameterSample TRUTH =
      ParameterSample.NONE
          .with(UncertainParameter.AIR_SIDE, Math.log(0.6))
          .with(UncertainParameter.DIFFUSIVITY, Math.log(1.5));
  private static final double[] SIX_WEIGHINGS = {0.1, 0.25, 0.4, 0.55, 0.7, 0.9};

  /** Relative errors of the thick spot's dry-through, its middle forecast against the truth. */
  private record Errors(
      double untaught, double afterThreeTrials, double afterOneWeighing, double afterBoth) {}

  private static List<Errors> errors = List.of();

  @BeforeAll
  static void learn() {
    errors = IntStream.range(0, NOTEBOOKS).mapToObj(LearningBarsTest::notebook).toList();
  }

  private static Errors notebook(int seed) {
    SyntheticPlates plates = new SyntheticPlates(seed);
    List<Trial> first =
        Stream.generate(() -> SyntheticPlates.dried(plates.any("shed"), TRUTH, SIX_WEIGHINGS))
            .limit(3)
            .toList();
    Trial next = plates.any("shed");
    double truthS = SyntheticPlates.dryThroughS(next, TRUTH);
    Trial weighedOnce = SyntheticPlates.dried(next, TRUTH, 0.25);
    SharedParameters untaught = SharedParameters.untaught();
    SharedParameters taught = Learner.taughtBy(first, Path.of(""), () -> {}).shared();
    return new Errors(
        error(SyntheticPlates.forecast(next, untaught).middle(), truthS),
        error(SyntheticPlates.forecast(next, taught).middle(), truthS),
        error(SyntheticPlates.forecast(weighedOnce, untaught).middle(), truthS),
        error(SyntheticPlates.forecast(weighedOnce, taught).middle(), truthS));
  }

  private static double error(double forecastS, double truthS) {
    return Math.abs(forecastS / truthS - 1);
  }

  private static double median(ToDoubleFunction<Errors> of) {
    return errors.stream()
        .map(of::applyAsDouble)
        .sorted(Comparator.naturalOrder())
        .skip(NOTEBOOKS / 2)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theTextbookIsOffByMoreThanThirtyPercentInSuchARoom() {
    assertThat(median(Errors::untaught)).isGreaterThan(0.30);
  }

  @Test
  void afterThreeTrialsOfSixWeighingsTheErrorIsUnderEightPercent() {
    assertThat(median(Errors::afterThreeTrials)).isLessThan(0.08);
  }

  @Test
  void afterOneWeighingAQuarterOfTheWayThePlatesErrorIsUnderTwelvePercent() {
    assertThat(median(Errors::afterOneWeighing)).isLessThan(0.12);
    assertThat(median(Errors::afterBoth)).isLessThan(0.08);
  }
}
