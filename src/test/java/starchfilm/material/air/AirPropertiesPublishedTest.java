package starchfilm.material.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties of air against handbook tables, and the smooth fits against the full formulas. */
class AirPropertiesPublishedTest {
  /**
   * Incropera et al., Fundamentals of Heat and Mass Transfer, table A.4, air (recalled; its
   * densities belong to 100 kPa): viscosity 1e-7 Pa s, conductivity 1e-3 W/(m K), density kg/m3.
   */
  @ParameterizedTest
  @CsvSource(
      useHeadersInDisplayName = true,
      textBlock =
          """
          kelvin, viscosity, conductivity, density
          250, 159.6, 22.3, 1.3947
          300, 184.6, 26.3, 1.1614
          350, 208.2, 30.0, 0.9950
          """)
  void agreesWithTheHandbook(double kelvin, double viscosity, double conductivity, double density) {
    StandardAtmosphere1976 air = new StandardAtmosphere1976();
    assertThat(air.viscosityPaS(kelvin) / (viscosity * 1e-7)).isCloseTo(1, within(0.01));
    assertThat(air.conductivityWPerMK(kelvin) / (conductivity * 1e-3)).isCloseTo(1, within(0.01));
    assertThat(HumidAir.densityKgPerM3(kelvin, 0, 1e5) / density).isCloseTo(1, within(0.002));
  }

  /** Incropera et al., table A.8: water vapour in air at 298 K, 2.6e-5 m2/s (recalled; 5 %). */
  @Test
  void vapourSpreadsAsFastAsTheHandbooksSay() {
    assertThat(new MarreroMason1972().m2PerS(298.15, 101325)).isCloseTo(2.6e-5, within(0.13e-5));
  }

  /** The known ratio for vapour in air: Sc about 0.6, Lewis number 0.85 to 0.9 (recalled). */
  @Test
  void schmidtAndLewisNumbersAreThoseOfVapourInAir() {
    double t = 295;
    assertThat(FilmLayer.kinematicViscosity(t) / FilmLayer.diffusivity(t)).isBetween(0.60, 0.64);
    assertThat(FilmLayer.thermalDiffusivity(t) / FilmLayer.diffusivity(t)).isBetween(0.85, 0.90);
  }

  /**
   * The virtual density over a wet plate at 17 C in a room of 20 C and 50 %: heavier than the room
   * by 0.74 %, worked by hand from {@code rho = (p - 0.378 e)/(287.05 T)}.
   */
  @Test
  void airOverACoolWetPlateIsHeavierThanTheRoom() {
    WagnerPruss1993 saturation = new WagnerPruss1993();
    double room = HumidAir.densityKgPerM3(293.15, 0.5 * saturation.pa(293.15), 101325);
    double surface = HumidAir.densityKgPerM3(290.15, saturation.pa(290.15), 101325);
    assertThat(surface / room - 1).isCloseTo(0.0074, within(2e-4));
  }

  static Stream<Arguments> fits() {
    return Stream.of(
        Arguments.of("diffusivity", FilmLayer.DIFFUSIVITY_M2_PER_S, 0),
        Arguments.of("viscosity", FilmLayer.KINEMATIC_VISCOSITY_M2_PER_S, 1),
        Arguments.of("laminar", FilmLayer.LAMINAR_GROUP, 2),
        Arguments.of("Rayleigh", FilmLayer.RAYLEIGH_GROUP, 3),
        Arguments.of("Lewis", FilmLayer.LEWIS_TWO_THIRDS, 4));
  }

  /** Tolerance: what the class of the fits promises. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("fits")
  void fitsFollowTheFullFormulas(String name, SmoothFit fit, int which) {
    for (double t = SmoothFit.FROM_K; t <= SmoothFit.TO_K; t += 1) {
      double nu = FilmLayer.kinematicViscosity(t);
      double d = FilmLayer.diffusivity(t);
      double full =
          switch (which) {
            case 0 -> d;
            case 1 -> nu;
            case 2 -> Math.pow(d, 2.0 / 3) / Math.pow(nu, 1.0 / 6);
            case 3 -> nu * d;
            default -> Math.pow(FilmLayer.thermalDiffusivity(t) / d, 2.0 / 3);
          };
      assertThat(fit.at(SmoothFit.position(t)) / full).as("%s K", t).isCloseTo(1, within(1e-5));
    }
  }

  /** Kinetic theory: half as fast at twice the pressure. */
  @Test
  void vapourSpreadsInverselyToThePressure() {
    MarreroMason1972 law = new MarreroMason1972();
    assertThat(law.m2PerS(300, 2 * HumidAir.STANDARD_PRESSURE_PA))
        .isCloseTo(law.m2PerS(300, HumidAir.STANDARD_PRESSURE_PA) / 2, within(1e-12));
  }
}
