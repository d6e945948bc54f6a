package starchfilm.report.words;

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

  @Test
  void rangesUseADashOnlyWhereItCannotBeMisread() {
    assertThat(Figures.range("2.6", "14")).isEqualTo("2.6–14");
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
    assertThat(ReaderUnit.MINUTE.noted(900)).isEqualTo("15 min");
    // 1 g mm/(m2 day kPa) is 1.1574e-11 g/(m s Pa), that is 1.1574e-14 kg/(m s Pa).
    assertThat(ReaderUnit.PERMEABILITY.of(1.1574074e-14))
        .isCloseTo(1, org.assertj.core.api.Assertions.within(1e-6));
  }
}
