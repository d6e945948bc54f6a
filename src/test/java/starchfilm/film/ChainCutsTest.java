package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

class ChainCutsTest {
  private final Composition sour = Castings.paste(StarchKind.CORN, 0.04, 0.3, 0, 0.005);

  /** An activation energy of 130 kJ/mol doubles the rate over 6 K near 95 °C. */
  @Test
  void sixKelvinOrTwiceTheTimeCutTwiceAsMuch() {
    double cuts = cuts(Castings.cook(15, 95)).middle();

    assertThat(cuts(Castings.cook(15, 101)).middle() / cuts).isCloseTo(2, within(0.1));
    assertThat(cuts(Castings.cook(30, 95)).middle() / cuts).isCloseTo(2, within(1e-12));
  }

  @Test
  void pasteNotKeptHotIsNotCut() {
    assertThat(cuts(Castings.cook(0, 95))).isEqualTo(new Band(0, 0, 0));
  }

  /** ln 3 of the rate, 130 kJ/(R T^2) a kelvin, and the time's own share, added in squares. */
  @Test
  void unsureCookWidensTheBand() {
    Cook rough = new Cook(new Estimate(900, 300), new Estimate(368.15, 4), Estimate.exact(0));
    double perKelvin = 130_000 / 8.31446 / (368.15 * 368.15);
    double logSd =
        Math.sqrt(Math.pow(Math.log(3), 2) + Math.pow(4 * perKelvin, 2) + Math.pow(300.0 / 900, 2));

    Band cuts = cuts(rough);

    assertThat(Math.log(cuts.high() / cuts.middle()) / Band.Z90).isCloseTo(logSd, within(1e-6));
  }

  /**
   * An hour at 80 °C: {@code s = 2e-5 [H+] 3600}; amylose of 1000 units becomes {@code 1000/(1 +
   * 1000 s)}, and strength falls by half the share that is lost; three times or a third of the cuts
   * are one standard deviation.
   */
  @Test
  void anHourAtEightyDegreesIsCountedByHand() {
    ChainCuts hour = new ChainCuts(sour, Castings.cook(60, 80));
    double cuts = 2e-5 * Math.pow(10, -hour.acidEffect().pastePh()) * 3600;
    assertThat(hour.acidEffect().chainCutsPerBond().middle()).isCloseTo(cuts, within(1e-12));
    FilmState film = new FilmState(0.2, 0.25, 0, 0, 0.12, 0.5, Castings.ROOM_K);
    FilmInfluence.Effect effect = hour.on(FilmProperty.TENSILE_STRENGTH, film);
    assertThat(effect.factor()).isCloseTo(strength(cuts), within(1e-12));
    assertThat(effect.logSd())
        .isCloseTo(Math.log(strength(cuts / 3) / strength(3 * cuts)) / 2, within(1e-12));
  }

  private static double strength(double cuts) {
    return 1 - 0.5 * (1 - 1 / (1 + 1000 * cuts));
  }

  @Test
  void actsOnStrengthOnlyAndSaysHowSureItIs() {
    ChainCuts cuts = new ChainCuts(sour, Castings.cook(15, 95));
    FilmState film = new FilmState(0.2, 0.25, 0, 0, 0.12, 0.5, Castings.ROOM_K);

    FilmInfluence.Effect effect = cuts.on(FilmProperty.TENSILE_STRENGTH, film);

    assertThat(effect.factor()).isEqualTo(cuts.acidEffect().strengthFactor().middle());
    assertThat(effect.logSd()).isBetween(0.03, 0.15);
    assertThat(cuts.on(FilmProperty.ELONGATION, film)).isEqualTo(FilmInfluence.Effect.NONE);
  }

  private Band cuts(Cook cook) {
    return new ChainCuts(sour, cook).acidEffect().chainCutsPerBond();
  }
}
