package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

class SkinStretchTest {
  @Test
  void isTheElongationRuleOfTheDryFilm() {
    for (int plasticiser = 0; plasticiser <= 45; plasticiser++) {
      Composition paste = Pastes.paste(StarchKind.POTATO, plasticiser);
      FilmState atRest = FilmState.atRest(paste, 0.5, Pastes.ROOM_K);

      assertThat(
              SkinStretch.of(paste, Workmanship.LABORATORY)
                  .stretchAtBreak(atRest.waterKgPerKgDry(), Pastes.ROOM_K))
          .isCloseTo(new StretchRule().predict(atRest), within(1e-12));
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

    assertThat(skin.stretchAtBreak(0, Pastes.ROOM_K)).isCloseTo(0.7 * 0.052, within(0.001));
    assertThat(skin.stretchAtBreak(5, Pastes.ROOM_K)).isCloseTo(0.7 * 0.752, within(0.001));
  }

  @Test
  void refusesNegativeMoisture() {
    SkinStretch skin = SkinStretch.of(Pastes.paste(StarchKind.POTATO, 10));

    assertThatThrownBy(() -> skin.stretchAtBreak(-0.1, Pastes.ROOM_K))
        .hasMessage("moisture of the skin: -0.1 given, allowed 0 kg per kg dry or more");
  }
}
