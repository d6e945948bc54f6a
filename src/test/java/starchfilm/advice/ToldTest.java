package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.numerics.evidence.Band;

/** Figures as a reader finds them in a sentence: two that count, in the unit people speak in. */
class ToldTest {
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86_400;
  private static final double NEVER = Double.POSITIVE_INFINITY;

  @Test
  void standsInTheUnitsOfAKitchen() {
    assertThat(Told.percent(0.0234)).isEqualTo("2.3 %");
    assertThat(Told.level(0.292)).isEqualTo("29 g");
    assertThat(Told.millimetres(0.00325)).isEqualTo("3.2 mm");
    assertThat(Told.micrometres(123e-6)).isEqualTo("120 µm");
    assertThat(Told.celsius(293.6)).isEqualTo("20 °C");
    assertThat(Told.grams(0.0843)).isEqualTo("84.3 g");
    assertThat(Told.minutes(900)).isEqualTo("15 min");
  }

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
  void aChanceIsNeverNoneOrAll(double probability, String words) {
    assertThat(Told.chance(probability)).isEqualTo(words);
  }

  @Test
  void aTimeIsInHoursUpToTwoDays() {
    assertThat(Told.span(10 * HOUR_S)).isEqualTo("10 hours");
    assertThat(Told.span(47.4 * HOUR_S)).isEqualTo("47 hours");
    assertThat(Told.span(2 * DAY_S)).isEqualTo("2 days");
    assertThat(Told.span(NEVER)).isEqualTo("never");
  }

  @Test
  void aRangeHasTheUnitOfItsMiddleAndNoEndlessNumber() {
    assertThat(Told.span(new Band(1.5 * DAY_S, 3 * DAY_S, 5 * DAY_S))).isEqualTo("3 days (1.5–5)");
    assertThat(Told.span(new Band(10 * HOUR_S, 20 * HOUR_S, 3 * DAY_S)))
        .isEqualTo("20 hours (10–72)");
    assertThat(Told.span(new Band(2 * DAY_S, 2 * DAY_S, NEVER))).isEqualTo("2 days (2 to never)");
    assertThat(Told.span(new Band(DAY_S, NEVER, NEVER))).isEqualTo("24 hours to never");
    assertThat(Told.span(new Band(NEVER, NEVER, NEVER))).isEqualTo("never");
    assertThat(Told.band(new Band(1e6, 2e6, 3.54e6), 1e-6, " MPa")).isEqualTo("2 MPa (1–3.5)");
  }
}
