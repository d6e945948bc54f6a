package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;

/** Protein and fibre of flour, citric acid, chalk: counted, not modelled. */
class InertSolidsTest {
  private static final FilmForecast PLAIN = forecast(0);
  private static final FilmForecast FILLED = forecast(0.006);

  @Test
  void widenStrengthStretchAndStiffnessBothWays() {
    assertThat(ratio(FILLED.tensileStrengthPa()))
        .isGreaterThan(1.1 * ratio(PLAIN.tensileStrengthPa()));
    assertThat(ratio(FILLED.elongationAtBreak()))
        .isGreaterThan(1.3 * ratio(PLAIN.elongationAtBreak()));
    assertThat(ratio(FILLED.youngsModulusPa()))
        .isGreaterThan(1.05 * ratio(PLAIN.youngsModulusPa()));
  }

  @Test
  void thickenTheFilmAndTakeUpNoWater() {
    assertThat(FILLED.dryThicknessM().middle())
        .isGreaterThan(1.08 * PLAIN.dryThicknessM().middle());
    assertThat(FILLED.equilibriumMoisture().middle() * 0.056)
        .isCloseTo(PLAIN.equilibriumMoisture().middle() * 0.05, within(1e-4));
    assertThat(ratio(FILLED.equilibriumMoisture()))
        .isGreaterThan(ratio(PLAIN.equilibriumMoisture()));
  }

  @Test
  void areNamedAmongCautionsAndSources() {
    assertThat(PLAIN.cautions()).doesNotContain(FilmCaution.INERT_SOLIDS);
    assertThat(FILLED.cautions()).contains(FilmCaution.INERT_SOLIDS);
    assertThat(FILLED.sources()).contains(InertSolids.SOURCE);
    assertThat(PLAIN.sources()).doesNotContain(InertSolids.SOURCE);
  }

  private static double ratio(Band band) {
    return band.high() / band.low();
  }

  private static FilmForecast forecast(double inert) {
    return new FilmForecaster()
        .forecast(
            Castings.filmIn(
                0.5,
                Composition.of(
                    Map.of(StarchKind.WHEAT, 1.0), 0.04, 0.01, 0, 0, 0.95 - inert, inert)));
  }
}
