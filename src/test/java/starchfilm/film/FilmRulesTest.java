package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Pour;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** The rules' printed formulas, worked by hand. */
class FilmRulesTest {
  /**
   * Least at 20 g: 2.6e-10 g/(m s Pa) in air of 80 %, {@code exp(7 * 0.04)} at none, {@code
   * exp(0.63)} from 50 g; half of it in air of 40 %, whose mean with dry air is 20 points lower.
   */
  @ParameterizedTest
  @CsvSource({
    "0.2, 0.8, 1",
    "0, 0.8, 1.3231298",
    "0.5, 0.8, 1.8776106",
    "0.8, 0.8, 1.8776106",
    "0.2, 0.4, 0.5"
  })
  void permeability(double level, double humidity, double factor) {
    assertThat(new FittedVapourPermeability().predict(film(level, 0.25, humidity)))
        .isCloseTo(2.6e-13 * factor, within(1e-19));
  }

  /** At the middles of the steps half the glass is left: 21 + 1.3 MPa, 1000 + 9.9 MPa, 40.2 %. */
  @Test
  void eachMechanicalRuleIsHalfwayAtItsMiddle() {
    assertThat(new StrengthRule().at(-24.6, 0.25)).isCloseTo(22.3e6, within(1.0));
    assertThat(new StrengthRule().at(-24.6, 0.75)).isCloseTo(22.3e6 * Math.exp(0.4), within(1.0));
    assertThat(new StiffnessRule().at(-19, 0.25)).isCloseTo(1009.9e6, within(1.0));
    assertThat(new StretchRule().at(12.8, 0.25)).isCloseTo(0.402, within(1e-12));
  }

  /** Far below the glass transition film breaks at flaws: 1 from -100 K up, 2 from -120 K down. */
  @ParameterizedTest
  @CsvSource({"-90, 1", "-100, 1", "-110, 1.5", "-120, 2", "-140, 2"})
  void strengthOfVeryDryFilmReachesFurtherDown(double aboveGlassK, double divisor) {
    FilmState film = film(0, 0.25, 0.5);
    FilmState moved =
        new FilmState(
            0, 0.25, 0, 0, 0.1, 0.5, film.temperatureK() - film.aboveGlassK() + aboveGlassK);
    assertThat(new StrengthRule().lowEndDividedBy(moved)).isCloseTo(divisor, within(1e-9));
    assertThat(new StretchRule().lowEndDividedBy(moved)).isEqualTo(1);
  }

  /** Salt neither softens nor plasticises: 30 % of it leaves the transition where it was. */
  @Test
  void saltLeavesTheGlassTransitionOfTheRest() {
    FilmRule rule = new CouchmanKaraszTransition();
    FilmState clean = new FilmState(0.2, 0.25, 0, 0, 0.1, 0.5, 300);
    FilmState salty = new FilmState(0.2, 0.25, 0.3, 0, 0.07, 0.5, 300);
    assertThat(rule.predict(salty)).isCloseTo(rule.predict(clean), within(1e-9));
  }

  /** Moisture between its ends adds {@code ln(v_high/v_low)/(2 * 1.2816)} to the pour's own 8 %. */
  @Test
  void unsureMoistureWidensTheThickness() {
    Composition paste = Castings.paste(StarchKind.CORN, 0.04, 0.3);
    Casting pour = Castings.film(paste).with(new Pour(new Estimate(2e-3, 0.16e-3), 0.25, 333.15));
    Band dry = DryThickness.of(pour, new Band(0.05, 0.1, 0.3));
    double dryVolume = (1 / 1.3) / 1500 + (0.3 / 1.3) / 1258;
    double high = dryVolume + 0.3 / 997;
    double low = dryVolume + 0.05 / 997;
    double logSd = Math.hypot(0.08, Math.log(high / low) / (2 * 1.2815516));
    assertThat(Math.log(dry.high() / dry.middle()) / 1.2815516).isCloseTo(logSd, within(1e-7));
  }

  @Test
  void aFilmOfTwoStarchesHasTheirAmylose() {
    Composition blend =
        new Composition(
            Map.of(StarchKind.CORN, 0.5, StarchKind.WAXY_CORN, 0.5), 0.05, 0, 0, 0, 0.95, 0);
    double amylose =
        (StarchKind.CORN.amyloseFraction() + StarchKind.WAXY_CORN.amyloseFraction()) / 2;
    FilmState film = FilmState.atRest(blend, 0.5, Castings.ROOM_K);
    assertThat(film.amyloseFraction()).isCloseTo(amylose, within(1e-12));
  }

  private static FilmState film(double level, double amylose, double humidity) {
    return new FilmState(level / (1 + level), amylose, 0, 0, 0.1, humidity, Castings.ROOM_K);
  }
}
