package starchfilm.numerics.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in sentences. */
class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "0.034449, 2, 0.034",
    "12.04, 3, 12",
    "1237, 3, 1240",
    "123456, 2, 120000",
    "0, 3, 0",
    "-0.0, 3, 0",
    "-0.5, 2, -0.5",
    "0.99996, 3, 1"
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

  @ParameterizedTest
  @CsvSource({"Infinity, endless", "-Infinity, -endless", "NaN, unknown"})
  void saysWhenThereIsNoEnd(double value, String written) {
    assertThat(Figures.of(value, 2)).isEqualTo(written);
  }
}
