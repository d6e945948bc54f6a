package starchfilm.material.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A tripwire, not evidence: steady wet plates (0.2 m, bench 3 W/(m2 K)) as an earlier trial code of
 * ours had them with the same correlations; 2 % in rate, two figures being given.
 */
class PlateTransferRegressionTest {
  @ParameterizedTest
  @CsvSource(
      useHeadersInDisplayName = true,
      textBlock =
          """
          dryC, rhPct, mPerS, surfaceC, kgPerM2H
          20, 50, 0, 17.4, 0.040
          20, 50, 0.1, 16.7, 0.056
          20, 50, 0.2, 16.2, 0.069
          20, 50, 0.5, 15.6, 0.093
          20, 50, 1, 15.2, 0.120
          25, 50, 0.1, 21.0, 0.070
          25, 40, 0.1, 20.1, 0.085
          22, 60, 4, 17.4, 0.173
          22, 60, 6, 17.3, 0.205
          40, 30, 0.5, 28.6, 0.264
          60, 10, 1, 34.1, 0.729
          """)
  void agreesWithTheFirstTrial(
      double dryC, double rhPct, double mPerS, double surfaceC, double kgPerM2H) {
    PlateTransfer face = new PlateTransfer(0.2, 0.2, 0);
    face.setAir(dryC + 273.15, rhPct / 100, mPerS);
    double found = WetPlate.steadyK(face, dryC + 273.15, 3) - 273.15;
    assertThat(found).isCloseTo(surfaceC, within(0.25));
    assertThat(face.vapourFluxKgPerM2S() * 3600 / kgPerM2H).isCloseTo(1, within(0.02));
  }
}
