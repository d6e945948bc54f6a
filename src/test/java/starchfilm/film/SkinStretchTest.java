package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.ingredient.StarchKind;
import starchfilm.recipe.Composition;

class SkinStretchTest {
  /** The skin's rule is the elongation rule in other words; here within a factor of 1.25. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 20, 23, 26, 30, 35, 40, 45})
  void agreesWithTheElongationRuleAtRest(double plasticiser) {
    Composition paste = Pastes.paste(StarchKind.CORN, plasticiser);
    FilmState atRest = FilmState.atRest(paste, 0.5, Pastes.ROOM_K);
    double rule = new FittedElongation().predict(atRest);

    double skin =
        SkinStretch.of(paste, Workmanship.LABORATORY)
            .stretchAtBreak(atRest.waterKgPerKgDry(), Pastes.ROOM_K);

    assertThat(skin / rule).isBetween(1 / 1.25, 1.25);
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
