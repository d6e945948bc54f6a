package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** Readings turned back into mixtures, against measured tables that the rules were not made of. */
class JarReadingPublishedTest {
  /**
   * Bosart and Snoddy 1927, Ind. Eng. Chem. 19:506, inverted with the formula of Volk and Kaehler
   * 2018. Agreement: within 0.22 % glycerol, from the largest gap of 0.54 kg/m3; the 10 to 90 %
   * range of an exact reading holds the table's value, within its tails.
   */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/starchfilm/material/ingredient/bosart-snoddy-1927-density.csv",
      useHeadersInDisplayName = true)
  void densityGivesTheTablesMixture(double percent, double at20, double at25, double at30) {
    assertMixture(at20, 293.15, percent);
    assertMixture(at25, 298.15, percent);
    assertMixture(at30, 303.15, percent);
  }

  /**
   * Refractive indices of Gerke et al. 2023 at 25 C, inverted with the table of Hoyt 1934.
   * Agreement: 0.25 % glycerol up to 75 %; the row at 99.5 % reads as pure, as laboratories
   * disagree there and the range is wide.
   */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/starchfilm/material/ingredient/gerke-2023-refractive-index.csv",
      useHeadersInDisplayName = true)
  void refractiveIndexGivesTheOtherLaboratorysMixture(double percent, double at25) {
    Band mixture =
        glycerol(0, new RefractometerReading(Estimate.exact(at25), Estimate.exact(298.15)));

    assertThat(100 * mixture.middle()).isCloseTo(percent, within(percent < 90 ? 0.3 : 0.8));
  }

  /**
   * Sodium chloride in water at 20 C, 5 %: density 1034.0 kg/m3 (read: Poradnik fizykochemiczny
   * 1974, halfway between 1026.8 at 4 % and 1041.3 at 6 %), index 1.3418 (CRC Handbook, recalled).
   * With the salt taken off, both must read as water again. Agreement: 2 % glycerol at 5 % salt,
   * where not taking it off would read 14 % and 6 %.
   */
  @Test
  void brineReadsAsWaterOnceItsSaltIsTakenOff() {
    double salt = 0.05;
    DensityReading density = new DensityReading(Estimate.exact(1034.0), Estimate.exact(293.15));
    RefractometerReading index =
        new RefractometerReading(Estimate.exact(1.3418), Estimate.exact(293.15));

    assertThat(glycerol(salt, density).middle()).isLessThan(0.025);
    assertThat(glycerol(0, density).middle()).isCloseTo(0.14, within(0.02));
    assertThat(glycerol(salt, index).middle()).isLessThan(0.02);
    assertThat(glycerol(0, index).middle()).isCloseTo(0.07, within(0.01));
  }

  private static Band glycerol(double salt, JarReading reading) {
    JarPrior prior = JarPrior.reading(1, Estimate.exact(salt), 0, 0);
    return new JarPosterior(Estimate.exact(1), prior, Optional.of(reading)).content().glycerol();
  }

  private static void assertMixture(double kgPerM3, double temperatureK, double percent) {
    Band mixture =
        glycerol(0, new DensityReading(Estimate.exact(kgPerM3), Estimate.exact(temperatureK)));

    assertThat(100 * mixture.middle()).isCloseTo(percent, within(0.25));
    assertThat(percent / 100).isBetween(mixture.low() - 0.0015, mixture.high() + 0.0015);
  }
}
