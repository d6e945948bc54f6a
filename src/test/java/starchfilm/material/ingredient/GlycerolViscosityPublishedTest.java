package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Viscosity of aqueous glycerol against Segur and Oberstar 1951, Ind. Eng. Chem. 43:2117.
 *
 * <p>Agreement: within 2.7 % at 20 C (worst at 70 %) and 2.8 % at 30 C (worst at 90 %).
 */
class GlycerolViscosityPublishedTest {
  private static final double PERCENT = 3;
  private final GlycerolViscosity viscosity = new Cheng2008();

  @ParameterizedTest
  @CsvFileSource(resources = "segur-oberstar-1951-viscosity.csv", useHeadersInDisplayName = true)
  void agreesWithTheTable(double percent, double at20, double at30) {
    assertThat(1000 * viscosity.pascalSeconds(percent / 100, 293.15))
        .isCloseTo(at20, withinPercentage(PERCENT));
    assertThat(1000 * viscosity.pascalSeconds(percent / 100, 303.15))
        .isCloseTo(at30, withinPercentage(PERCENT));
  }
}
