package starchfilm.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import starchfilm.evidence.Band;

/** Points of a sample, by hand. */
class QuantilesTest {
  /** Definition 7 of Hyndman and Fan: 0 to 10 have 1, 5 and 9; of 0 to 3 the tenth is 0.3. */
  @Test
  void areThoseOfTheTextbook() {
    double never = Double.POSITIVE_INFINITY;
    assertThat(Quantiles.band(DoubleStream.iterate(10, x -> x - 1).limit(11).toArray()))
        .isEqualTo(new Band(1, 5, 9));
    assertThat(Quantiles.of(new double[] {3, 2, 1, 0}, 0.1)).isCloseTo(0.3, within(1e-12));
    assertThat(Quantiles.of(new double[] {3, 2, 1, 0}, 1)).isEqualTo(3);
    assertThat(Quantiles.of(new double[] {1, never, 0, 2}, 0.9)).isEqualTo(never);
    assertThat(Quantiles.of(new double[] {never, never}, 0.5)).isEqualTo(never);
    assertThat(Quantiles.finiteShare(new double[] {1, never, 0, 2})).isEqualTo(0.75);
  }
}
