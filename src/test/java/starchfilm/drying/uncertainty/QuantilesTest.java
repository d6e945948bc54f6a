package starchfilm.drying.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Band;

/** Points of a sample, by hand. */
class QuantilesTest {
  /** Definition 5 of Hyndman and Fan: 0 to 9 have 0.5, 4.5 and 8.5; of 0 to 3 a quarter is 0.5. */
  @Test
  void areThoseOfTheTextbook() {
    double never = Double.POSITIVE_INFINITY;
    assertThat(Quantiles.band(DoubleStream.iterate(9, x -> x - 1).limit(10).toArray()))
        .isEqualTo(new Band(0.5, 4.5, 8.5));
    assertThat(Quantiles.of(new double[] {3, 2, 1, 0}, 0.25)).isCloseTo(0.5, within(1e-12));
    assertThat(Quantiles.of(new double[] {3, 2, 1, 0}, 0.01)).isEqualTo(0);
    assertThat(Quantiles.of(new double[] {3, 2, 1, 0}, 1)).isEqualTo(3);
    assertThat(Quantiles.of(new double[] {1, never, 0, 2}, 0.9)).isEqualTo(never);
    assertThat(Quantiles.of(new double[] {never, never}, 0.5)).isEqualTo(never);
    assertThat(Quantiles.finiteShare(new double[] {1, never, 0, 2})).isEqualTo(0.75);
  }
}
