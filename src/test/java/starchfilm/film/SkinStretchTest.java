package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

class SkinStretchTest {
  /**
   * The skin's rule is the elongation rule in other words, set by corn: 0.93 to 1.17 of it. Kinds
   * that hold more water stretch more: tapioca and wheat up to 1.46, potato up to 2.07, about the
   * elongation rule's own factor of 2.
   */
  @ParameterizedTest
  @CsvSource({
    "CORN, 1.2",
    "WAXY_CORN, 1.2",
    "HIGH_AMYLOSE_CORN, 1.2",
    "RICE, 1.2",
    "WHEAT, 1.5",
    "TAPIOCA, 1.5",
    "POTATO, 2.1"
  })
  void agreesWithTheElongationRuleAtRest(StarchKind kind, double atMost) {
    for (int plasticiser = 0; plasticiser <= 45; plasticiser++) {
      Composition paste = Pastes.paste(kind, plasticiser);
      FilmState atRest = FilmState.atRest(paste, 0.5, Pastes.ROOM_K);
      double rule = new FittedElongation().predict(atRest);

      double skin =
          SkinStretch.of(paste, Workmanship.LABORATORY)
              .stretchAtBreak(atRest.waterKgPerKgDry(), Pastes.ROOM_K);

      assertThat(skin / rule).as("%s g", plasticiser).isBetween(0.85, atMost);
    }
  }

  @Test
  void risesWithMoistureAndTemperatureWithoutAStep() {
    SkinStretch skin = SkinStretch.of(Pastes.paste(StarchKind.POTATO, 20));
    for (double moisture = 0; moisture < 1; moisture += 0.001) {
      double here = skin.stretchAtBreak(moisture, Pastes.ROOM_K);
      double wetter = skin.stretchAtBreak(moisture + 0.001, Pastes.ROOM_K);
      assertThat(wetter).isGreaterThanOrEqualTo(here).isCloseTo(here, within(0.03));
      assertThat(skin.stretchAtBreak(moisture, Pastes.ROOM_K + 1)).isGreaterThanOrEqualTo(here);
    }
  }

  @Test
  void boneDryFilmIsBrittleAndWetSkinGivesWay() {
    SkinStretch skin = SkinStretch.of(Pastes.paste(StarchKind.POTATO, 10));

    assertThat(skin.stretchAtBreak(0, Pastes.ROOM_K)).isCloseTo(0.7 * 0.037, within(0.001));
    assertThat(skin.stretchAtBreak(5, Pastes.ROOM_K)).isCloseTo(0.7 * 0.747, within(0.001));
  }

  @Test
  void refusesNegativeMoisture() {
    SkinStretch skin = SkinStretch.of(Pastes.paste(StarchKind.POTATO, 10));

    assertThatThrownBy(() -> skin.stretchAtBreak(-0.1, Pastes.ROOM_K))
        .hasMessage("moisture of the skin: -0.1 given, allowed 0 kg per kg dry or more");
  }
}
