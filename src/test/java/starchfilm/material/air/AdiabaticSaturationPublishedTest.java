package starchfilm.material.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The wet bulb against the psychrometric reference library and its handbook. */
class AdiabaticSaturationPublishedTest {
  private static final double ZERO_C = 273.15;
  private final AdiabaticSaturation air =
      new AdiabaticSaturation(new WagnerPruss1993(), HumidAir.STANDARD_PRESSURE_PA);

  /**
   * Thermodynamic wet bulb at 101 325 Pa, computed with the reference library psychrolib 1.1.1
   * (ASHRAE Fundamentals 2017 formulas), rounded to 0.01 K.
   */
  @ParameterizedTest
  @CsvSource(
      useHeadersInDisplayName = true,
      textBlock =
          """
          dryC, rhPct, wetC
          10, 50, 5.54
          15, 50, 9.67
          20, 30, 10.85
          20, 40, 12.36
          20, 50, 13.78
          20, 60, 15.14
          20, 70, 16.44
          20, 80, 17.68
          22, 60, 16.87
          25, 40, 16.21
          25, 50, 17.89
          25, 60, 19.47
          30, 40, 20.06
          30, 50, 22.01
          30, 60, 23.81
          40, 20, 22.03
          40, 30, 25.09
          60, 10, 28.99
          """)
  void agreesWithTheReferenceLibrary(double dryC, double rhPct, double wetC) {
    assertThat(air.wetBulbK(dryC + ZERO_C, rhPct / 100) - ZERO_C).isCloseTo(wetC, within(0.01));
  }

  /**
   * ASHRAE Handbook Fundamentals 2017, chapter 1, example 1: dry 40 C, wet 20 C, W = 0.0065, read
   * off a chart; the formula gives 0.0064.
   */
  @Test
  void agreesWithTheHandbooksExample() {
    assertThat(air.humidityRatioAt(40 + ZERO_C, 20 + ZERO_C)).isCloseTo(0.0065, within(1.5e-4));
  }

  /** Psychrolib's own test file: dry 30 C, wet 25 C at 95 461 Pa, W = 0.019228 (0.5 % allowed). */
  @Test
  void agreesUnderLowerPressure() {
    AdiabaticSaturation high = new AdiabaticSaturation(new WagnerPruss1993(), 95461);
    assertThat(high.humidityRatioAt(30 + ZERO_C, 25 + ZERO_C) / 0.019228)
        .isCloseTo(1, within(5e-3));
  }

  /** ASHRAE Handbook Fundamentals 2017, chapter 1, table 2, saturated air (0.5 % enhancement). */
  @ParameterizedTest
  @CsvSource({"5, 0.005425", "25, 0.020173", "50, 0.086863"})
  void saturatedAirHoldsWhatTheHandbookSays(double celsius, double humidityRatio) {
    double saturatedPa = new WagnerPruss1993().pa(celsius + ZERO_C);
    assertThat(AdiabaticSaturation.humidityRatio(saturatedPa, 101325) / humidityRatio)
        .isCloseTo(1, within(6e-3));
  }

  @Test
  void saturatedAirIsItsOwnWetBulb() {
    assertThat(air.wetBulbK(293.15, 1)).isEqualTo(293.15);
  }

  @Test
  void refusesAWetBulbThatFreezes() {
    assertThatThrownBy(() -> air.wetBulbK(274.15, 0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "wet bulb: air at 1.0 C and relative humidity 0.1 has its wet bulb below 0 C, where"
                + " water freezes; allowed are wet bulbs above 0 C; give warmer or damper air");
  }
}
