package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

class FeelAndCautionsTest {
  private final FilmForecaster forecaster = new FilmForecaster();

  /**
   * Windows at 50 % relative humidity: brittle below 20 g, pleasantly flexible from 25 to 40 g,
   * sticky above 40 to 45 g; brittle below 25 g under 35 %, sticky above 35 g at 75 %. Source:
   * judged from the published elongations (see FilmCaution).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 50, BRITTLE",
    "15, 50, BRITTLE",
    "22, 50, STIFF",
    "28, 50, FLEXIBLE",
    "33, 50, FLEXIBLE",
    "41, 50, STRETCHY",
    "45, 50, STICKY",
    "20, 30, BRITTLE",
    "15, 75, FLEXIBLE",
    "40, 75, STICKY"
  })
  void feelFollowsPlasticiserAndAir(double plasticiser, double humidity, Feel feel) {
    assertThat(
            forecaster
                .forecast(
                    Castings.filmIn(
                        humidity / 100, Castings.paste(StarchKind.CORN, 0.04, plasticiser / 100)))
                .feel())
        .isEqualTo(feel);
  }

  @Test
  void coldMakesAFlexibleFilmStiff() {
    Composition paste = Castings.paste(StarchKind.CORN, 0.04, 0.28);
    Casting shed = Castings.film(paste).with(new Use(0.5, 278.15, 0));

    assertThat(forecaster.forecast(shed).feel()).isIn(Feel.STIFF, Feel.BRITTLE);
  }

  @ParameterizedTest
  @CsvSource({
    "10, 50, MAY_CRACK_OFF, true",
    "10, 50, ANTIPLASTICISED, true",
    "10, 70, ANTIPLASTICISED, false",
    "0, 50, ANTIPLASTICISED, false",
    "10, 75, MAY_CRACK_OFF, false",
    "22, 50, MAY_CRACK_OFF, false",
    "22, 30, MAY_CRACK_OFF, true",
    "29, 50, MAY_SEPARATE, false",
    "30, 50, MAY_SEPARATE, true",
    "51, 50, MAY_SEPARATE, false",
    "51, 50, SEPARATES, true",
    "51, 50, MAY_SWEAT, true",
    "38, 50, TACKY, false",
    "44, 50, TACKY, true",
    "38, 75, TACKY, true"
  })
  void warnsByPlasticiserAndAir(
      double plasticiser, double humidity, FilmCaution caution, boolean warned) {
    assertThat(
            forecaster
                .forecast(
                    Castings.filmIn(
                        humidity / 100, Castings.paste(StarchKind.CORN, 0.04, plasticiser / 100)))
                .cautions()
                .contains(caution))
        .isEqualTo(warned);
  }

  @ParameterizedTest
  @CsvSource({
    "CORN, 0.04, MAY_SETTLE",
    "CORN, 0.10, TOO_THICK_TO_LEVEL",
    "POTATO, 0.0009, MAY_SETTLE",
    "POTATO, 0.06, TOO_THICK_TO_LEVEL"
  })
  void warnsOfPasteThatSettlesOrDoesNotLevel(StarchKind kind, double starch, FilmCaution caution) {
    assertThat(cautions(Castings.paste(kind, starch, 0.3, 0, 0))).contains(caution);
  }

  @Test
  void blendsSettleByTheVolumeOfTheirGranules() {
    Composition half =
        new Composition(
            Map.of(StarchKind.CORN, 0.5, StarchKind.TAPIOCA, 0.5), 0.05, 0, 0, 0, 0.95, 0);

    assertThat(PasteBody.of(half).settlesBelow())
        .isCloseTo(1 / (0.5 / 0.044 + 0.5 / 0.014), within(1e-12));
  }

  @Test
  void warnsOfACookTooCoolForTheStarch() {
    Composition corn = Castings.paste(StarchKind.CORN, 0.04, 0.3);

    assertThat(cooked(corn, 70)).contains(FilmCaution.UNDERCOOKED);
    assertThat(cooked(corn, 90)).doesNotContain(FilmCaution.UNDERCOOKED);
  }

  @Test
  void highAmyloseNeedsPressure() {
    Composition high = Castings.paste(StarchKind.HIGH_AMYLOSE_CORN, 0.04, 0.3);

    assertThat(cooked(high, 99))
        .contains(FilmCaution.NEEDS_PRESSURE_COOK)
        .doesNotContain(FilmCaution.UNDERCOOKED);
    assertThat(cooked(high, 125)).doesNotContain(FilmCaution.NEEDS_PRESSURE_COOK);
  }

  @Test
  void warnsOfSaltInTwoSteps() {
    assertThat(cautions(Castings.paste(StarchKind.CORN, 0.045, 0.3, 0.04, 0)))
        .contains(FilmCaution.SALT_NOTICEABLE)
        .doesNotContain(FilmCaution.SALT_HIGH);
    assertThat(cautions(Castings.paste(StarchKind.CORN, 0.045, 0.3, 0.10, 0)))
        .contains(FilmCaution.SALT_HIGH);
  }

  @Test
  void warnsOfThickFilmThinnedPasteAndNoStarch() {
    Casting thick = Castings.film(Castings.paste(StarchKind.CORN, 0.05, 0.3, 0, 0)).pouredTo(8e-3);

    assertThat(forecaster.forecast(thick).cautions()).contains(FilmCaution.THICK_FILM);
    assertThat(cautions(Castings.paste(StarchKind.CORN, 0.045, 0.3, 0, 0.005)))
        .contains(FilmCaution.PASTE_THINS);
    assertThat(cautions(new Composition(Map.of(), 0, 0.05, 0, 0, 0.95, 0)))
        .contains(FilmCaution.NO_FILM);
  }

  @Test
  void aGoodRecipeIsNotWarnedOf() {
    assertThat(cautions(Castings.paste(StarchKind.CORN, 0.05, 0.28, 0, 0))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FilmCaution.class)
  void everyCautionHasABasis(FilmCaution caution) {
    assertThat(caution.source().citation()).isNotBlank();
  }

  private List<FilmCaution> cautions(Composition paste) {
    return forecaster.forecast(Castings.film(paste)).cautions();
  }

  private List<FilmCaution> cooked(Composition paste, double celsius) {
    return forecaster.forecast(Castings.film(paste).with(Castings.cook(15, celsius))).cautions();
  }
}
