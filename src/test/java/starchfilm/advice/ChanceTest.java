package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.drying.MilestoneForecast;
import starchfilm.numerics.evidence.Band;

/** The probability read off a band is the band's own at its three points, and never falls. */
class ChanceTest {
  private static final double FOREVER = Double.POSITIVE_INFINITY;

  /** Nobody knows that none or all of a hundred plates will. */
  @ParameterizedTest
  @CsvSource({
    "0, fewer than 1 of 100",
    "0.004, fewer than 1 of 100",
    "0.006, 1 of 100",
    "0.5, 50 of 100",
    "0.994, 99 of 100",
    "0.996, more than 99 of 100",
    "1, more than 99 of 100",
  })
  void isSaidNeverToBeNoneOrAll(double probability, String words) {
    assertThat(Chance.words(probability)).isEqualTo(words);
  }

  @Test
  void isTenFiftyAndNinetyPerCentAtThePointsOfTheBand() {
    MilestoneForecast milestone = dry(new Band(5, 9, 20), 1);
    assertThat(Chance.by(milestone, 5)).isCloseTo(0.1, within(1e-6));
    assertThat(Chance.by(milestone, 9)).isCloseTo(0.5, within(1e-6));
    assertThat(Chance.by(milestone, 20)).isCloseTo(0.9, within(1e-6));
  }

  @Test
  void isThatOfTheLogNormalDistributionTheBandWasMadeFrom() {
    MilestoneForecast milestone = dry(Band.logNormal(10, 1.5), 1);
    // One standard deviation of the logarithm above the median: 84.13 % (any normal table).
    assertThat(Chance.by(milestone, 15)).isCloseTo(0.8413, within(1e-4));
    assertThat(Chance.by(milestone, 10 / 1.5)).isCloseTo(0.1587, within(1e-4));
  }

  @Test
  void neverExceedsTheShareInWhichItComesAtAll() {
    assertThat(Chance.by(dry(new Band(5, 9, FOREVER), 0.7), 1e6)).isEqualTo(0.7);
    assertThat(Chance.by(dry(new Band(5, FOREVER, FOREVER), 0.3), 1e6)).isEqualTo(0.3);
    assertThat(Chance.by(dry(new Band(FOREVER, FOREVER, FOREVER), 0), 1e6)).isZero();
  }

  /** Between two cases a point of the band is never as soon as one of them is. */
  @Test
  void isAtMostTenPerCentBeforeTheTenPerCentPoint() {
    assertThat(Chance.by(dry(new Band(FOREVER, FOREVER, FOREVER), 0.11), 1e6)).isEqualTo(0.1);
    assertThat(Chance.by(dry(new Band(5, FOREVER, FOREVER), 0.3), 4)).isEqualTo(0.1);
  }

  @Test
  void neverFallsWithTime() {
    for (Band band :
        new Band[] {new Band(5, 9, 20), new Band(5, 9, FOREVER), new Band(5, FOREVER, FOREVER)}) {
      double before = 0;
      for (double time = 0.5; time < 100; time *= 1.1) {
        double chance = Chance.by(dry(band, 0.6), time);
        assertThat(chance).isBetween(before, 1.0);
        before = chance;
      }
    }
  }

  private static MilestoneForecast dry(Band band, double share) {
    return new MilestoneForecast(band, share);
  }
}
