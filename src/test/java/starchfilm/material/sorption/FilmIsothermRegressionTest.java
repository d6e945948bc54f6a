package starchfilm.material.sorption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.material.ingredient.StarchKind;

/**
 * A tripwire, not evidence: the moisture of each starch without glycerol, worked outside the
 * program from the constants that {@link StarchIsotherms} names.
 */
class FilmIsothermRegressionTest {
  @ParameterizedTest
  @CsvSource({
    "CORN, 0.0994, 0.1424, 0.1941",
    "WAXY_CORN, 0.0994, 0.1424, 0.1941",
    "HIGH_AMYLOSE_CORN, 0.0967, 0.1430, 0.1994",
    "POTATO, 0.1038, 0.1473, 0.1980",
    "TAPIOCA, 0.1052, 0.1508, 0.2055",
    "WHEAT, 0.1045, 0.1490, 0.2017",
    "RICE, 0.0989, 0.1369, 0.1838"
  })
  void eachStarchHoldsWhatItsConstantsSay(StarchKind kind, double at33, double at57, double at75) {
    GabIsotherm isotherm = StarchIsotherms.of(kind);
    assertThat(isotherm.moisture(0.33)).isCloseTo(at33, within(6e-5));
    assertThat(isotherm.moisture(0.57)).isCloseTo(at57, within(6e-5));
    assertThat(isotherm.moisture(0.75)).isCloseTo(at75, within(6e-5));
  }
}
