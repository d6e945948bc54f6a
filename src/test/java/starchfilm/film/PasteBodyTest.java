package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** How much starch a paste needs and bears, by hand from the figures of its starches. */
class PasteBodyTest {
  /**
   * Corn swells to fill the liquid at 4.4 % and is cast at 4 to 7 %; a third above is too thick.
   */
  @Test
  void aStarchHasItsOwnLimits() {
    PasteBody body = PasteBody.of(Castings.paste(StarchKind.CORN, 0.05, 0.3));
    assertThat(body.starchInPaste()).isEqualTo(0.05);
    assertThat(body.settlesBelow()).isCloseTo(0.044, within(1e-12));
    assertThat(body.castUpTo()).isCloseTo(0.07, within(1e-12));
    assertThat(body.levelsUpTo()).isCloseTo(0.07 * 4 / 3, within(1e-12));
  }

  /** Swollen volumes add: 0.6 of tapioca, 1.4 %, and 0.4 of corn, 4.4 %, fill it at 1.925 %. */
  @Test
  void inABlendTheSwollenVolumesAddAndTheCastRangesMean() {
    Composition blend =
        Castings.paste(0.05, 0.3)
            .withStarches(Map.of(StarchKind.TAPIOCA, 0.6, StarchKind.CORN, 0.4));
    PasteBody body = PasteBody.of(blend);
    assertThat(body.settlesBelow()).isCloseTo(1 / (0.6 / 0.014 + 0.4 / 0.044), within(1e-9));
    assertThat(body.castUpTo()).isCloseTo(0.6 * 0.05 + 0.4 * 0.07, within(1e-12));
  }

  @Test
  void starchThatDoesNotSwellInAnOpenPanSettlesAtNoConcentration() {
    assertThat(PasteBody.of(Castings.paste(StarchKind.HIGH_AMYLOSE_CORN, 0.05, 0.3)).settlesBelow())
        .isZero();
  }
}
