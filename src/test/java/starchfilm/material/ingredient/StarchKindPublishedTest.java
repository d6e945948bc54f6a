package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.numerics.evidence.ValidRange;
import starchfilm.numerics.units.Named;

/** Every starch kind lies inside the handbook's ranges, and its own figures are in order. */
class StarchKindPublishedTest {
  @ParameterizedTest
  @CsvFileSource(resources = "starch-handbook.csv", useHeadersInDisplayName = true)
  void liesInsideTheHandbook(
      String kind,
      double amyloseFrom,
      double amyloseTo,
      double moistureFrom,
      double moistureTo,
      double gelFrom,
      double gelTo) {
    StarchKind starch =
        Arrays.stream(StarchKind.values())
            .filter(k -> k.tradeName().equals(kind))
            .findFirst()
            .orElseThrow();
    assertThat(starch).hasToString(kind);
    assertThat(Named.of(starch)).isEqualTo(kind);

    assertThat(100 * starch.amyloseFraction()).isBetween(amyloseFrom, amyloseTo);
    assertThat(100 * starch.powderMoisture().value()).isBetween(moistureFrom, moistureTo);
    assertThat(starch.gelatinisationOnsetK() - 273.15).isBetween(gelFrom, gelTo);
    assertThat(starch.gelatinisationEndK() - 273.15).isBetween(gelFrom, gelTo);
  }

  @ParameterizedTest
  @EnumSource
  void cooksAboveTheEndOfGelatinisation(StarchKind kind) {
    assertThat(kind.gelatinisationOnsetK()).isLessThan(kind.gelatinisationPeakK());
    assertThat(kind.gelatinisationPeakK()).isLessThan(kind.gelatinisationEndK());
    assertThat(topK(kind)).isGreaterThan(kind.gelatinisationEndK());
    assertThat(kind.cookGuide().openPanWorks()).isEqualTo(topK(kind) < 373.15);
    assertThat(kind.cookGuide().holdMinutes().min()).isGreaterThanOrEqualTo(10);
    assertThat(kind.cookGuide().holdMinutes().max()).isLessThanOrEqualTo(30);
  }

  private static double topK(StarchKind kind) {
    ValidRange celsius = kind.cookGuide().topCelsius();
    return (celsius.min() + celsius.max()) / 2 + 273.15;
  }
}
