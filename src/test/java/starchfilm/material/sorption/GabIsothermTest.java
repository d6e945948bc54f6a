package starchfilm.material.sorption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.material.ingredient.StarchKind;

/** The isotherm of a starch against what its formula says. */
class GabIsothermTest {
  /** At the activity {@code 1/(K (1 + sqrt C))} the first layer is full, whatever the constants. */
  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void holdsItsMonolayerWhereTheFormulaSays(StarchKind kind) {
    GabIsotherm isotherm = StarchIsotherms.of(kind);
    double activity = 1 / (isotherm.multilayerRatio() * (1 + Math.sqrt(isotherm.bindingRatio())));
    assertThat(isotherm.moisture(activity)).isCloseTo(isotherm.monolayer(), within(1e-15));
  }
}
