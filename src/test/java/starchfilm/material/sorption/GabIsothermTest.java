package starchfilm.material.sorption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.material.ingredient.StarchKind;

/** The isotherm of a starch against the same formula differentiated by a library. */
class GabIsothermTest {
  /** Automatic differentiation (Commons Math), exact but for rounding; reached 1e-13. */
  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void slopeIsTheDerivativeOfTheFormula(StarchKind kind) {
    GabIsotherm isotherm = StarchIsotherms.of(kind);
    for (double activity = 0; activity <= 1; activity += 0.01) {
      DerivativeStructure ka =
          new DerivativeStructure(1, 1, 0, activity).multiply(isotherm.multilayerRatio());
      DerivativeStructure free = ka.negate().add(1);
      DerivativeStructure bound = ka.multiply(isotherm.bindingRatio());
      DerivativeStructure moisture =
          bound.multiply(isotherm.monolayer()).divide(free.multiply(free.add(bound)));
      assertThat(isotherm.moisture(activity)).isCloseTo(moisture.getValue(), within(1e-14));
      assertThat(isotherm.slope(activity) / moisture.getPartialDerivative(1))
          .as("%s at %s", kind, activity)
          .isCloseTo(1, within(1e-12));
    }
  }

  /** At the activity {@code 1/(K (1 + sqrt C))} the first layer is full, whatever the constants. */
  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void holdsItsMonolayerWhereTheFormulaSays(StarchKind kind) {
    GabIsotherm isotherm = StarchIsotherms.of(kind);
    double activity = 1 / (isotherm.multilayerRatio() * (1 + Math.sqrt(isotherm.bindingRatio())));
    assertThat(isotherm.moisture(activity)).isCloseTo(isotherm.monolayer(), within(1e-15));
  }
}
