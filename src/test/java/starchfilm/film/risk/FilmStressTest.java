package starchfilm.film.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.drying.SpotMoment;
import starchfilm.film.DryingMechanics;
import starchfilm.material.recipe.Composition;

/**
 * Stress, crack energy and pull of a glass that dries a little further, worked by hand: far below
 * its glass transition film without glycerol has 2,009.9 MPa and takes up 200 J/m2.
 */
class FilmStressTest {
  private static final double MODULUS_PA = 2009.9e6;

  /** 0.1 kg of dry starch a square metre: 1/15 mm and its water. */
  private static final double SOLIDS_KG_PER_M2 = 0.1;

  private final Composition paste = Castings.paste(0.06, 0);
  private final FilmStress stress =
      new FilmStress(DryingMechanics.of(paste), paste, SOLIDS_KG_PER_M2);

  /** Volume per dry solids, {@code 1/1500 + X/997} m3/kg. */
  private static double volume(double moisture) {
    return 1 / 1500.0 + moisture / 997;
  }

  /** {@code sigma = 0.2 E/(1 - 0.35) ln(v/v')/3}. */
  private static double stressPa(double from, double to) {
    return 0.2 * MODULUS_PA / 0.65 * Math.log(volume(from) / volume(to)) / 3;
  }

  @Test
  void aFifthOfWhatTheShrinkingStretchesStays() {
    dry(0.02, 0.02, 0.01, 0.01);
    double expected = stressPa(0.02, 0.01);
    assertThat(stress.stressPa()).isCloseTo(expected, within(1e-3 * expected));
    assertThat(stress.thicknessM()).isCloseTo(0.1 * volume(0.01), within(1e-12));
    assertThat(stress.unevenShrinking()).isZero();
  }

  /** 1.13 (1 - 0.35^2) h sigma^2/E over 200 J/m2; half of sigma^2 h (1 - 0.35^2)/E pulls it off. */
  @Test
  void theEnergyOfACrackAndOfThePullFollowFromIt() {
    dry(0.03, 0.03, 0.01, 0.01);
    double sigma = stressPa(0.03, 0.01);
    double perM2 = 0.8775 * 0.1 * volume(0.01) * sigma * sigma / MODULUS_PA;
    assertThat(stress.liftingJPerM2()).isCloseTo(perM2 / 2, within(2e-3 * perM2));
    assertThat(stress.crackRatio()).isCloseTo(1.13 * perM2 / 200, within(2e-3 * perM2 / 200));
    double held = 0.8775 * 0.3 / 2 * sigma * sigma / MODULUS_PA / 200;
    assertThat(stress.heldCrackRatio(0.3)).isCloseTo(held, within(2e-3 * held));
  }

  /** Skin a sixth, middle four, core a sixth; only the skin dries, the mean falls by a sixth. */
  @Test
  void theSkinCarriesItsSixthOfTheThickness() {
    stress.start(new SpotMoment(0, 0.03, 0.03, 0.03, 295));
    stress.follow(new SpotMoment(60, 0.03 - 0.02 / 6, 0.01, 0.03, 295));
    double expected = stressPa(0.03, 0.01) / 6;
    assertThat(stress.stressPa()).isCloseTo(expected, within(1e-3 * expected));
    assertThat(stress.unevenShrinking())
        .isCloseTo(Math.log(volume(0.03) / volume(0.01)), within(1e-9));
    assertThat(stress.meanVolume()).isCloseTo(volume(0.03 - 0.02 / 6), within(1e-12));
  }

  @Test
  void swellingSlackensItNeverBelowNone() {
    dry(0.02, 0.02, 0.03, 0.03);
    assertThat(stress.stressPa()).isZero();
    stress.follow(new SpotMoment(120, 0.02, 0.02, 0.02, 295));
    assertThat(stress.stressPa()).isCloseTo(stressPa(0.03, 0.02), within(1e4));
  }

  /** From a gel through the glass transition the modulus rises by decades: one step or forty. */
  @Test
  void longStepsAreFollowedAsFineOnesAre() {
    FilmStress fine = new FilmStress(DryingMechanics.of(paste), paste, SOLIDS_KG_PER_M2);
    dry(0.4, 0.4, 0.05, 0.05);
    fine.start(new SpotMoment(0, 0.4, 0.4, 0.4, 295));
    for (int i = 1; i <= 400; i++) {
      double moisture = 0.4 * Math.pow(0.05 / 0.4, i / 400.0);
      fine.follow(new SpotMoment(i, moisture, moisture, moisture, 295));
    }
    assertThat(stress.stressPa()).isCloseTo(fine.stressPa(), within(0.002 * fine.stressPa()));
  }

  /** The same while it warms by 30 K: the state moves with the temperature too. */
  @Test
  void warmingIsFollowedAsWell() {
    FilmStress fine = new FilmStress(DryingMechanics.of(paste), paste, SOLIDS_KG_PER_M2);
    stress.start(new SpotMoment(0, 0.3, 0.3, 0.3, 285));
    stress.follow(new SpotMoment(60, 0.1, 0.1, 0.1, 315));
    fine.start(new SpotMoment(0, 0.3, 0.3, 0.3, 285));
    for (int i = 1; i <= 400; i++) {
      double moisture = 0.3 * Math.pow(0.1 / 0.3, i / 400.0);
      fine.follow(new SpotMoment(i, moisture, moisture, moisture, 285 + 30 * i / 400.0));
    }
    assertThat(stress.stressPa()).isCloseTo(fine.stressPa(), within(0.005 * fine.stressPa()));
  }

  private void dry(double skinFrom, double coreFrom, double skinTo, double coreTo) {
    stress.start(new SpotMoment(0, (skinFrom + coreFrom) / 2, skinFrom, coreFrom, 295));
    stress.follow(new SpotMoment(60, (skinTo + coreTo) / 2, skinTo, coreTo, 295));
  }
}
