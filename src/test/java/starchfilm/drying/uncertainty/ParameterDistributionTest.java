package starchfilm.drying.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Band;

/** Deviations by value, and draws against the covariance they are drawn from. */
class ParameterDistributionTest {
  @Test
  void deviationsAreEqualByValue() {
    ParameterSample some = ParameterSample.NONE.with(UncertainParameter.HUMIDITY, 0.1);
    ParameterSample same = ParameterSample.NONE.with(UncertainParameter.HUMIDITY, 0.1);
    assertThat(some).isEqualTo(same).hasSameHashCodeAs(same).isNotEqualTo(ParameterSample.NONE);
    assertThat(some).isNotEqualTo("0.1");
    assertThat(some.hashCode()).isNotEqualTo(ParameterSample.NONE.hashCode());
    assertThat(some.toString()).contains("0.1");
    assertThatThrownBy(() -> ParameterSample.of(0, 0.1))
        .hasMessage("deviations need one value a factor, not 2");
    assertThat(some.multiplier(UncertainParameter.HUMIDITY)).isEqualTo(1.1);
    assertThat(
            ParameterSample.NONE
                .with(UncertainParameter.BENCH, Math.log(2))
                .multiplier(UncertainParameter.BENCH))
        .isCloseTo(2, within(1e-12));
  }

  /** What goes in as a covariance comes out as one, of the model and of what it draws. */
  @Test
  void drawsHaveTheCovarianceTheyAreDrawnFrom() {
    int n = UncertainParameter.values().length;
    double[][] covariance = ParameterDistribution.textbook().covariance();
    int air = UncertainParameter.AIR_SIDE.ordinal();
    int bench = UncertainParameter.BENCH.ordinal();
    covariance[air][bench] = covariance[bench][air] = -0.6 * 0.35 * 0.5;
    double[] mean = new double[n];
    mean[air] = 0.2;
    ParameterDistribution model = ParameterDistribution.learnt(mean, covariance);
    assertThat(model.sd(UncertainParameter.BENCH)).isCloseTo(0.5, within(1e-9));
    assertThat(model.mean().of(UncertainParameter.AIR_SIDE)).isEqualTo(0.2);
    ParameterSample[] draws = DrawnCases.of(model, 4096);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        assertThat(model.covariance()[i][j]).isCloseTo(covariance[i][j], within(1e-12));
        double sum = 0;
        for (ParameterSample draw : draws) {
          sum +=
              (draw.of(UncertainParameter.values()[i]) - mean[i])
                  * (draw.of(UncertainParameter.values()[j]) - mean[j]);
        }
        if (covariance[i][i] == 0 || covariance[j][j] == 0) {
          continue; // the plasticiser, which varies only with its jar
        }
        double scale = Math.sqrt(covariance[i][i] * covariance[j][j]);
        assertThat(sum / draws.length / scale)
            .as("%s %s", i, j)
            .isCloseTo(covariance[i][j] / scale, within(0.03));
      }
    }
    assertThat(model.widened(UncertainParameter.BENCH, 1.2).sd(UncertainParameter.BENCH))
        .isCloseTo(1.3, within(1e-9));
  }

  /** A linear outcome is normal, so its tenth is 1.2816 of its deviations off (any table). */
  @Test
  void aFewDrawsAlongAnOutcomesSlopeGiveItsRange() {
    ParameterDistribution model =
        ParameterDistribution.textbook().widened(UncertainParameter.THICKNESS, 0.1);
    double middle = outcome(model.mean());
    double[] slopes = new double[UncertainParameter.values().length];
    double variance = 0;
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = outcome(model.steps(1)[k]) - middle;
      variance += slopes[k] * slopes[k];
    }
    double sd = Math.sqrt(variance);
    double[] outcomes =
        Arrays.stream(DrawnCases.of(model, 48, slopes))
            .mapToDouble(ParameterDistributionTest::outcome)
            .toArray();
    Band band = Quantiles.band(outcomes);
    assertThat(band.low()).isCloseTo(middle - 1.2816 * sd, within(0.03 * sd));
    assertThat(band.middle()).isCloseTo(middle, within(0.03 * sd));
    assertThat(band.high()).isCloseTo(middle + 1.2816 * sd, within(0.03 * sd));
  }

  @Test
  void drawsAlongASlopeHaveTheSameCovariance() {
    ParameterDistribution model = ParameterDistribution.textbook();
    double[] slopes = {0.3, -0.2, 0.1, 0, 0.4, -0.1, 0.2, 0.3, 0, 0.1};
    ParameterSample[] draws = DrawnCases.of(model, 4096, slopes);
    for (UncertainParameter one : UncertainParameter.values()) {
      for (UncertainParameter other : UncertainParameter.values()) {
        double scale = model.sd(one) * model.sd(other);
        if (scale > 0) {
          double product =
              Arrays.stream(draws)
                  .mapToDouble(d -> d.of(one) * d.of(other))
                  .average()
                  .orElseThrow();
          assertThat(product / scale).isCloseTo(one == other ? 1 : 0, within(0.03));
        }
      }
    }
  }

  private static double outcome(ParameterSample of) {
    return 3
        - 0.4 * of.of(UncertainParameter.AIR_SIDE)
        - 0.7 * of.of(UncertainParameter.DIFFUSIVITY)
        + of.of(UncertainParameter.THICKNESS);
  }
}
