package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;

/** Protein and fibre of flour, citric acid, chalk: counted, not modelled. */
class InertSolidsTest {
  private final FilmForecast plain = forecast(0);
  private final FilmForecast filled = forecast(0.006);

  @Test
  void widenStrengthStretchAndStiffnessBothWays() {
    assertThat(ratio(filled.tensileStrengthPa()))
        .isGreaterThan(1.1 * ratio(plain.tensileStrengthPa()));
    assertThat(ratio(filled.elongationAtBreak()))
        .isGreaterThan(1.3 * ratio(plain.elongationAtBreak()));
    assertThat(ratio(filled.youngsModulusPa()))
        .isGreaterThan(1.05 * ratio(plain.youngsModulusPa()));
  }

  /**
   * Of a tenth of the volume, by hand: {@code 1 - 0.1^(1/3)} = 0.5358, {@code 1 - 1.21 0.1^(2/3)} =
   * 0.7393, {@code 1 + 0.25} and {@code 0.9/1.05} = 0.8571; beyond 0.3 nothing more is said.
   */
  @ParameterizedTest
  @CsvSource({
    "ELONGATION, 0.1, 0.5358",
    "TENSILE_STRENGTH, 0.1, 0.7393",
    "YOUNGS_MODULUS, 0.1, 1.25",
    "VAPOUR_PERMEABILITY, 0.1, 0.8571",
    "GLASS_TRANSITION, 0.1, 1",
    "YOUNGS_MODULUS, 0.3, 1.75",
    "YOUNGS_MODULUS, 0.5, 1.75"
  })
  void widenByWhatHardGrainsWouldDoAndMoveNothing(
      FilmProperty property, double share, double factor) {
    FilmState film = new FilmState(0.2, 0.25, 0, share, 0.1, 0.5, Castings.ROOM_K);
    FilmInfluence.Effect effect = new InertSolids().on(property, film);
    assertThat(effect.factor()).isEqualTo(1);
    assertThat(effect.logSd()).isCloseTo(Math.abs(Math.log(factor)), within(1e-4));
  }

  /** Up to 30 % of the dry solids is known; 4 g beside 5 g is 44.4 %, 0.02 g beside 5 g 0.4 %. */
  @Test
  void areFlaggedBeyondThirtyPerCentOfTheDrySolids() {
    assertThat(forecast(0.0002).extrapolations())
        .extracting(each -> each.range().quantity())
        .doesNotContain("solids that are neither starch nor glycerol");
    assertThat(forecast(0.04).extrapolations())
        .filteredOn(
            each -> each.range().quantity().equals("solids that are neither starch nor glycerol"))
        .singleElement()
        .satisfies(each -> assertThat(each.given()).isCloseTo(44.44, within(0.01)));
  }

  @Test
  void thickenTheFilmAndTakeUpNoWater() {
    assertThat(filled.dryThicknessM().middle())
        .isGreaterThan(1.08 * plain.dryThicknessM().middle());
    assertThat(filled.equilibriumMoisture().middle() * 0.056)
        .isCloseTo(plain.equilibriumMoisture().middle() * 0.05, within(1e-4));
    assertThat(ratio(filled.equilibriumMoisture()))
        .isGreaterThan(ratio(plain.equilibriumMoisture()));
  }

  @Test
  void areNamedAmongCautionsAndSources() {
    assertThat(plain.cautions()).doesNotContain(FilmCaution.INERT_SOLIDS);
    assertThat(filled.cautions()).contains(FilmCaution.INERT_SOLIDS);
    assertThat(filled.sources()).contains(InertSolids.SOURCE);
    assertThat(plain.sources()).doesNotContain(InertSolids.SOURCE);
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
