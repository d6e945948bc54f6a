package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** The rules' printed formulas, worked by hand. */
class FilmRulesTest {
  /**
   * Least at 20 g: 2.6e-10 g/(m s Pa), {@code exp(7 * 0.04)} at none, {@code exp(0.63)} from 50 g.
   */
  @ParameterizedTest
  @CsvSource({"0.2, 1", "0, 1.3231298", "0.5, 1.8776106", "0.8, 1.8776106"})
  void permeability(double level, double factor) {
    assertThat(new FittedVapourPermeability().predict(film(level, 0.25, 0.5)))
        .isCloseTo(2.6e-13 * factor, within(1e-19));
  }

  /** 37 MPa of dry normal starch; a per cent a per cent above 50 %; 1.1 an amylose share of one. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.25, 0.5, 1",
    "0, 0.25, 0.3, 1",
    "0, 0.25, 0.8, 0.7408182",
    "0, 0.70, 0.5, 1.6404984",
    "0.3, 0.25, 0.5, 0.1510718"
  })
  void strength(double level, double amylose, double humidity, double factor) {
    assertThat(new FittedTensileStrength().predict(film(level, amylose, humidity)))
        .isCloseTo(37e6 * factor, within(10.0));
  }

  /** Halfway between glass and rubber at 12 g: 1000 + 12 MPa. */
  @Test
  void modulusFallsByHalfAtItsMiddle() {
    assertThat(new PelegModulus().predict(film(0.12, 0.25, 0.5))).isCloseTo(1012e6, within(1.0));
  }

  /** Salt neither softens nor plasticises: 30 % of it leaves the transition where it was. */
  @Test
  void saltLeavesTheGlassTransitionOfTheRest() {
    FilmRule rule = new CouchmanKaraszTransition();
    FilmState clean = new FilmState(0.2, 0.25, 0, 0.1, 0.5, 300);
    FilmState salty = new FilmState(0.2, 0.25, 0.3, 0.07, 0.5, 300);
    assertThat(rule.predict(salty)).isCloseTo(rule.predict(clean), within(1e-9));
  }

  /** Moisture between its ends adds {@code ln(v_high/v_low)/(2 * 1.2816)} to the pour's own 8 %. */
  @Test
  void unsureMoistureWidensTheThickness() {
    Composition paste = Pastes.paste(StarchKind.CORN, 30);
    Casting pour =
        Castings.film(
            paste, 0, Pastes.cook(15, 95), new Estimate(2e-3, 0.16e-3), 0.5, Pastes.ROOM_K, 0);
    Band dry = DryThickness.of(pour, new Band(0.05, 0.1, 0.3));
    double dryVolume = (1 / 1.3) / 1500 + (0.3 / 1.3) / 1258;
    double high = dryVolume + 0.3 / 997;
    double low = dryVolume + 0.05 / 997;
    double logSd = Math.hypot(0.08, Math.log(high / low) / (2 * 1.2815516));
    assertThat(Math.log(dry.high() / dry.middle()) / 1.2815516).isCloseTo(logSd, within(1e-7));
  }

  @Test
  void leversTellWhyNothingMoves() {
    Levers levers = new Levers(new FilmForecaster());
    Casting plain = Pastes.fresh(Pastes.paste(StarchKind.CORN, 0.05, 28, 0, 0));
    Lever water = levers.of(plain).get(Ingredient.WATER.ordinal());
    Lever starch = levers.of(plain).get(Ingredient.STARCH.ordinal());
    assertThat(water.on(FilmProperty.PASTE_PH).unmoved()).contains(Unmoved.TOO_SMALL);
    assertThat(starch.on(FilmProperty.PASTE_PH).unmoved()).contains(Unmoved.NOT_ACID);
    assertThat(water.moved())
        .extracting(IngredientEffect::property)
        .contains(FilmProperty.STARCH_IN_PASTE)
        .doesNotContain(FilmProperty.PASTE_PH, FilmProperty.GLASS_TRANSITION);
    Lever empty = new Lever(Ingredient.WATER, 0.9, 0.95, java.util.List.of());
    assertThatThrownBy(() -> empty.on(FilmProperty.ELONGATION))
        .hasMessage("no effect on elongation at break");
  }

  @Test
  void aFilmOfTwoStarchesHasTheirAmylose() {
    Composition blend =
        new Composition(
            Map.of(StarchKind.CORN, 0.5, StarchKind.WAXY_CORN, 0.5), 0.05, 0, 0, 0, 0.95);
    double amylose =
        (StarchKind.CORN.amyloseFraction() + StarchKind.WAXY_CORN.amyloseFraction()) / 2;
    FilmState film = FilmState.atRest(blend, 0.5, Pastes.ROOM_K);
    assertThat(film.amyloseFraction()).isCloseTo(amylose, within(1e-12));
    assertThat(FilmState.amylose(0, 10).reading().applyAsDouble(film))
        .isCloseTo(100 * amylose, within(1e-9));
  }

  private static FilmState film(double level, double amylose, double humidity) {
    return new FilmState(level / (1 + level), amylose, 0, 0.1, humidity, Pastes.ROOM_K);
  }
}
