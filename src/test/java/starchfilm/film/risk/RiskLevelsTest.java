package starchfilm.film.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the levels begin, and the speed of mould between and beyond its table. */
class RiskLevelsTest {
  @ParameterizedTest
  @CsvSource({
    "0.1999, LOW",
    "0.2, WATCH",
    "0.999, WATCH",
    "1, LIKELY",
    "4.99, LIKELY",
    "5, EXPECTED"
  })
  void crackLevels(double ratio, RiskLevel level) {
    assertThat(CrackRisk.level(ratio)).isEqualTo(level);
  }

  @ParameterizedTest
  @CsvSource({
    "23.9, LOW",
    "24, WATCH",
    "47.9, WATCH",
    "48, LIKELY",
    "95.9, LIKELY",
    "96, EXPECTED"
  })
  void mouldLevels(double hours, RiskLevel level) {
    assertThat(MouldRisk.level(hours)).isEqualTo(level);
  }

  /** Adhesion is known within a factor of 3. */
  @ParameterizedTest
  @CsvSource({
    "0.333, LOW",
    "0.334, WATCH",
    "0.999, WATCH",
    "1, LIKELY",
    "2.99, LIKELY",
    "3, EXPECTED"
  })
  void curlLevels(double ratio, RiskLevel level) {
    assertThat(CurlRisk.level(ratio)).isEqualTo(level);
  }

  /** 18 days at 0.75, one at 0.95 and above; 2.5 times slower 10 K colder; nothing from 45 °C. */
  @ParameterizedTest
  @CsvSource({
    "0.7499, 22, 0",
    "0.75, 22, 0.0555556",
    "0.95, 22, 1",
    "0.99, 22, 1",
    "0.95, 12, 0.4",
    "0.95, 2, 0.16",
    "0.95, 44.9, 1",
    "0.95, 45, 0"
  })
  void mouldGrows(double activity, double celsius, double perDay) {
    assertThat(new MouldGrowth().speed(activity, celsius + 273.15)).isCloseTo(perDay, within(1e-6));
  }

  @Test
  void nameWhatTheyRestOn() {
    assertThat(PlateRisks.SOURCES).contains(FilmStress.SOURCE, Adhesion.SOURCE, MouldGrowth.SOURCE);
  }
}
