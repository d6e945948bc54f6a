package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import starchfilm.material.ingredient.StarchKind;

class LevellingPublishedTest {
  /**
   * A wide pool of mercury on glass stands 3.6 mm high (with 0.485 N/m, 13534 kg/m3 and a contact
   * angle of 140 degrees). Source: handbook figures of mercury; pool height as in de Gennes,
   * Brochard-Wyart and Quere 2004, section 2.2 (all recalled). Agreement: 3.59 mm.
   */
  @Test
  void aPoolOfMercuryStandsAsHighAsHandbooksSay() {
    assertThat(Levelling.poolHeight(13534, 0.485, Math.toRadians(140)))
        .isCloseTo(3.6e-3, within(0.05e-3));
  }

  /**
   * Water that wets nothing stands twice its capillary length of 2.7 mm high. Source: capillary
   * length of water, de Gennes et al. 2004, section 2.1 (recalled).
   */
  @Test
  void waterStandsTwiceItsCapillaryLength() {
    assertThat(Levelling.poolHeight(998, 0.0728, Math.PI)).isCloseTo(5.4e-3, within(0.1e-3));
  }

  /**
   * Without surface tension a ridge dies away by gravity alone; a layer of paint (1 Pa s, 1000
   * kg/m3) 1 mm thick with ridges 100 mm apart takes {@code tau = 3 eta/(rho g k2 h3) = 77.5 s},
   * computed by hand from Orchard's equation.
   */
  @Test
  void ridgesDieAwayAsOrchardsEquationSays() {
    assertThat(Levelling.thinnestLevelling(1, 1000, 0, 0.1, 77.49)).isCloseTo(1e-3, within(1e-6));
  }

  /**
   * Paste without a rim stands as high as water of 60 °C that wets nothing: 66.24 mN/m (IAPWS
   * R1-76, recalled) at 1000 kg/m3 make 2 sqrt(0.06624/9806.65) = 5.20 mm. The thinnest pour at the
   * thin end of what people cast, whose ridges are down to a twentieth (e^-3) in five minutes:
   * 0.444 mm, by hand from Orchard's equation with 0.5 Pa s and ridges 50 mm apart.
   */
  @Test
  void pasteStandsAsHighAsHotWaterAndLevelsInFiveMinutes() {
    StarchBlend potato = StarchBlend.of(Map.of(StarchKind.POTATO, 1.0), 1);
    Levelling thin = Levelling.of(potato, potato.castFrom(), 1000);

    assertThat(thin.standsUpToM()).isCloseTo(5.20e-3, within(5e-6));
    assertThat(thin.levelsFromM()).isCloseTo(0.444e-3, within(5e-7));
    assertThat(Levelling.of(potato, potato.castTo(), 1000).viscosityPaS())
        .isCloseTo(10 * thin.viscosityPaS(), within(1e-9));
  }
}
