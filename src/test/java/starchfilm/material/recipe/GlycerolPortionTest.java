package starchfilm.material.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.numerics.evidence.Estimate;

/** Whose glycerol is handled as if it held methanol: all but that bought with a label. */
class GlycerolPortionTest {
  @ParameterizedTest
  @CsvSource({
    "BOUGHT, 0.001, false",
    "RECOVERED, 0.001, true",
    "UNKNOWN, 0.001, true",
    "RECOVERED, 0, false",
  })
  void onlyBoughtGlycerolIsSurelyFreeOfMethanol(
      GlycerolOrigin origin, double massKg, boolean mayHoldMethanol) {
    GlycerolStock stock = new GlycerolStock(Estimate.exact(0.8), Estimate.exact(0.02), origin);
    assertThat(new GlycerolPortion(Estimate.exact(massKg), stock).mayHoldMethanol())
        .isEqualTo(mayHoldMethanol);
  }

  /** Glycerol that is bought with a label holds no salt. */
  @Test
  void saltTellsThatGlycerolWasRecoveredWhereNobodySaid() {
    assertThat(GlycerolOrigin.of(Optional.empty(), true)).isEqualTo(GlycerolOrigin.RECOVERED);
    assertThat(GlycerolOrigin.of(Optional.empty(), false)).isEqualTo(GlycerolOrigin.UNKNOWN);
    assertThat(GlycerolOrigin.of(Optional.of(GlycerolOrigin.UNKNOWN), true))
        .isEqualTo(GlycerolOrigin.RECOVERED);
    assertThat(GlycerolOrigin.of(Optional.of(GlycerolOrigin.BOUGHT), true))
        .isEqualTo(GlycerolOrigin.BOUGHT);
  }
}
