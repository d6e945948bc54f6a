package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Estimate;

/** What a bottle weighed three times says of a density. */
class DensityReadingTest {
  private static final double SCALE_SD_G = 0.29;

  /**
   * Weighed again and again, the ratio of the fillings scatters as the formula says. Method:
   * propagation of distributions, JCGM 101:2008, clause 7 (recalled); 200,000 trials know a
   * standard deviation to 0.16 %.
   */
  @Test
  void theBottlesUncertaintyIsThatOfManyWeighings() {
    RandomGenerator random = new MersenneTwister(11);
    double[] ratios =
        DoubleStream.generate(
                () -> {
                  double empty = 31 + SCALE_SD_G * random.nextGaussian();
                  double water = 131 + SCALE_SD_G * random.nextGaussian();
                  double sample = 152 + SCALE_SD_G * random.nextGaussian();
                  return (sample - empty) / (water - empty);
                })
            .limit(200_000)
            .toArray();
    double relativeSd = Math.sqrt(StatUtils.variance(ratios)) / StatUtils.mean(ratios);

    Estimate density =
        DensityReading.bottle(kg(31), kg(131), kg(152), Estimate.exact(293.15)).densityKgPerM3();

    assertThat(density.sd() / density.value()).isCloseTo(relativeSd, within(0.01 * relativeSd));
  }

  private static Estimate kg(double grams) {
    return new Estimate(grams / 1000, SCALE_SD_G / 1000);
  }
}
