package starchfilm.drying.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Band;

/** Deviations by value, and draws against the covariance they are drawn from. */
class FactorModelTest {
  @Test
  void deviationsAreEqualByValue() {
    Deviations some = Deviations.NONE.with(Factor.HUMIDITY, 0.1);
    Deviations same = Deviations.NONE.with(Factor.HUMIDITY, 0.1);
    assertThat(some).isEqualTo(same).hasSameHashCodeAs(same).isNotEqualTo(Deviations.NONE);
    assertThat(some).isNotEqualTo("0.1");
    assertThat(some.hashCode()).isNotEqualTo(Deviations.NONE.hashCode());
    assertThat(some.toString()).contains("0.1");
    assertThat(some.multiplier(Factor.HUMIDITY)).isEqualTo(1.1);
    assertThat(Deviations.NONE.with(Factor.BENCH, Math.log(2)).multiplier(Factor.BENCH))
        .isCloseTo(2, within(1e-12));
  }

  /** What goes in as a covariance comes out as one, of the model and of what it draws. */
  @Test
  void drawsHaveTheCovarianceTheyAreDrawnFrom() {
    int n = Factor.values().length;
    double[][] covariance = FactorModel.textbook().covariance();
    int air = Factor.AIR_SIDE.ordinal();
    int bench = Factor.BENCH.ordinal();
    covariance[air][bench] = covariance[bench][air] = -0.6 * 0.35 * 0.5;
    double[] mean = new double[n];
    mean[air] = 0.2;
    FactorModel model = FactorModel.learnt(mean, covariance);
    assertThat(model.sd(Factor.BENCH)).isCloseTo(0.5, within(1e-9));
    assertThat(model.mean().of(Factor.AIR_SIDE)).isEqualTo(0.2);
    Deviations[] draws = model.draws(4096);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        assertThat(model.covariance()[i][j]).isCloseTo(covariance[i][j], within(1e-12));
        double sum = 0;
        for (Deviations draw : draws) {
          sum += (draw.of(Factor.values()[i]) - mean[i]) * (draw.of(Factor.values()[j]) - mean[j]);
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
    assertThat(model.widened(Factor.BENCH, 1.2).sd(Factor.BENCH)).isCloseTo(1.3, within(1e-9));
  }

  /** A linear outcome is normal, so its tenth is 1.2816 of its deviations off (any table). */
  @Test
  void aFewDrawsAlongAnOutcomesSlopeGiveItsRange() {
    FactorModel model = FactorModel.textbook().widened(Factor.THICKNESS, 0.1);
    double middle = outcome(model.mean());
    double[] slopes = new double[Factor.values().length];
    double variance = 0;
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = outcome(model.steps(1)[k]) - middle;
      variance += slopes[k] * slopes[k];
    }
    double sd = Math.sqrt(variance);
    double[] outcomes =
        Arrays.stream(model.draws(48, slopes)).mapToDouble(FactorModelTest::outcome).toArray();
    Band band = Quantiles.band(outcomes);
    assertThat(band.low()).isCloseTo(middle - 1.2816 * sd, within(0.03 * sd));
    assertThat(band.middle()).isCloseTo(middle, within(0.03 * sd));
    assertThat(band.high()).isCloseTo(middle + 1.2816 * sd, within(0.03 * sd));
  }

  @Test
  void drawsAlongASlopeHaveTheSameCovariance() {
    FactorModel model = FactorModel.textbook();
    double[] slopes = {0.3, -0.2, 0.1, 0, 0.4, -0.1, 0.2, 0.3, 0};
    Deviations[] draws = model.draws(4096, slopes);
    for (Factor one : Factor.values()) {
      for (Factor other : Factor.values()) {
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

  private static double outcome(Deviations of) {
    return 3
        - 0.4 * of.of(Factor.AIR_SIDE)
        - 0.7 * of.of(Factor.DIFFUSIVITY)
        + of.of(Factor.THICKNESS);
  }
}
