package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The power of a t test against a published table of sample sizes. */
class TrendPowerPublishedTest {
  /** The table gives whole numbers of plates: with one fewer the power must be below. */
  @ParameterizedTest
  @CsvFileSource(resources = "two-means-power-80.csv", numLinesToSkip = 3)
  void needsAsManyPlatesAsCohensTable(double difference, int each) {
    assertThat(twoMeans(difference, each)).isCloseTo(0.8, within(0.012)).isGreaterThan(0.795);
    assertThat(twoMeans(difference, each - 1)).isLessThan(0.8);
  }

  /** Without an effect the test is wrong as often as its level says. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 10, 100})
  void showsNothingInFiveOfAHundredWithoutAnEffect(int freedom) {
    assertThat(TrendPower.chance(0, freedom)).isCloseTo(0.05, within(2e-4));
  }

  private static double twoMeans(double difference, int each) {
    return TrendPower.chance(difference * Math.sqrt(each / 2.0), 2 * each - 2);
  }
}
