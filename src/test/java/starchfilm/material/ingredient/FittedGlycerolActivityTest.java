package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shape of the activity rule and its inverse over the whole range. */
class FittedGlycerolActivityTest {
  private final FittedGlycerolActivity rule = new FittedGlycerolActivity();

  @ParameterizedTest
  @ValueSource(
      doubles = {
        1e-300, 1e-12, 1e-6, 0.01, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.99, 0.999, 0.999999, 1 - 1e-12
      })
  void inverseGivesTheActivityBack(double activity) {
    double water = rule.waterKgPerKgGlycerol(activity);

    // The exponential of a logarithm carries the rounding of that logarithm, several units in the
    // last place.
    double rounding = 1e-15 * activity * Math.max(4, -Math.log(activity));
    assertThat(rule.activity(water)).isCloseTo(activity, within(rounding));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-4, 0.01, 0.1, 0.5, 1, 5, 100, 1e4, 1e8})
  void activityGivesTheWaterBack(double water) {
    double back = rule.waterKgPerKgGlycerol(rule.activity(water));

    double roundingOfOneMinusActivity = 1e-15 * (1 + water);
    assertThat(back / water).isCloseTo(1, within(1e-13 + roundingOfOneMinusActivity));
  }

  @Test
  void risesEverywhere() {
    double before = 0;
    for (int i = 1; i <= 20_000; i++) {
      double water = rule.waterKgPerKgGlycerol(i / 20_001.0);
      assertThat(water).isGreaterThan(before);
      before = water;
    }
  }

  @Test
  void endsAtNoWaterAndAtEndlessWater() {
    assertThat(rule.waterKgPerKgGlycerol(0)).isZero();
    assertThat(rule.waterKgPerKgGlycerol(1)).isInfinite();
    assertThat(rule.activity(0)).isZero();
    assertThat(rule.activity(Double.POSITIVE_INFINITY)).isEqualTo(1);
    assertThat(rule.waterKgPerKgGlycerol(Double.MIN_VALUE)).isNotNegative().isLessThan(1e-300);
    assertThat(rule.waterKgPerKgGlycerol(Math.nextDown(1.0))).isFinite().isGreaterThan(1e14);
  }

  @Test
  void becomesRaoultsLawInHighDilution() {
    // 1 kg glycerol in 1000 kg water: x_w = 0.99980442.
    assertThat(rule.activity(1000)).isCloseTo(0.9998044, within(1e-6));
  }

  @Test
  void refusesAnActivityAboveOne() {
    assertThat(assertThrows(IllegalArgumentException.class, () -> rule.waterKgPerKgGlycerol(57)))
        .hasMessage("water activity: 57.0 given, allowed 0 to 1 (90 % is 0.9)");
    assertThrows(IllegalArgumentException.class, () -> rule.waterKgPerKgGlycerol(1.01));
    assertThrows(IllegalArgumentException.class, () -> rule.waterKgPerKgGlycerol(-0.01));
    assertThrows(IllegalArgumentException.class, () -> rule.waterKgPerKgGlycerol(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> rule.activity(-1e-9));
  }
}
