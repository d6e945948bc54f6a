package starchfilm.numerics.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "6, 6.0",
    "6.04, 6.0",
    "0.0123, 0.012",
    "123, 120",
    "1250, 1300",
    "99.6, 100",
    "0, 0",
    "9.96, 10",
    "-7.24, −7.2",
    "Infinity, never"
  })
  void forecastFiguresHaveTwoSignificantFigures(double value, String text) {
    assertThat(Figures.two(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"46.25, 46.25", "900, 900", "12.0, 12", "0.30000000000000004, 0.3", "12345, 12350"})
  void notedFiguresStayAsNoted(double value, String text) {
    assertThat(Figures.noted(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0.034449, 2, 0.034",
    "12.04, 3, 12",
    "1237, 3, 1240",
    "123456, 2, 120000",
    "0, 3, 0",
    "-0.0, 3, 0",
    "-0.5, 2, -0.5",
    "0.99996, 3, 1",
    "Infinity, 2, endless",
    "-Infinity, 2, -endless",
    "NaN, 2, unknown"
  })
  void countsFiguresWithoutExponent(double value, int figures, String written) {
    assertThat(Figures.of(value, figures)).isEqualTo(written);
  }

  @ParameterizedTest
  @CsvSource({"0.0843, 84.3, 8.43", "0.012345, 12.3, 1.23", "1.5, 1500, 150"})
  void writesGramsAndPerCent(double value, String grams, String percent) {
    assertThat(Figures.grams(value)).isEqualTo(grams);
    assertThat(Figures.percent(value)).isEqualTo(percent);
  }

  @Test
  void rangesUseADashOnlyWhereItCannotBeMisread() {
    assertThat(Figures.range("2.6", "14")).isEqualTo("2.6–14");
    assertThat(Figures.range("14", "14")).isEqualTo("14");
    assertThat(Figures.range("−7", "31")).isEqualTo("−7 to 31");
    assertThat(Figures.range("5.0", "never")).isEqualTo("5.0 to never");
  }

  @Test
  void unitsConvertFromSi() {
    assertThat(ReaderUnit.MEGAPASCAL.band(new Band(2.6e6, 6.1e6, 14e6)))
        .isEqualTo("6.1 MPa (2.6–14)");
    assertThat(ReaderUnit.CELSIUS.band(new Band(266.15, 285.25, 304.15)))
        .isEqualTo("12 °C (−7 to 31)");
    assertThat(ReaderUnit.GRAM.noted(new Estimate(0.046, 0.003))).isEqualTo("46 ± 3 g");
    assertThat(ReaderUnit.GRAM.noted(new Estimate(0.046, 0.0002))).isEqualTo("46 g");
    assertThat(ReaderUnit.PERCENT.brief(0.0234)).isEqualTo("2.3 %");
    assertThat(ReaderUnit.MILLIMETRE.brief(0.003)).isEqualTo("3 mm");
    assertThat(ReaderUnit.CELSIUS.brief(293.6)).isEqualTo("20 °C");
    assertThat(ReaderUnit.MINUTE.noted(900)).isEqualTo("15 min");
    // 1 g mm/(m2 day kPa) is 1.1574e-11 g/(m s Pa), that is 1.1574e-14 kg/(m s Pa).
    assertThat(ReaderUnit.PERMEABILITY.of(1.1574074e-14))
        .isCloseTo(1, org.assertj.core.api.Assertions.within(1e-6));
  }
}
