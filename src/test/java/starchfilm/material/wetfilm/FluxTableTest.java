package starchfilm.material.wetfilm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Castings;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.diffusion.FluxPotential.PotentialReader;

/**
 * The tabulated potential of the flux against its integral, from freezing to a boiling hot pour.
 */
class FluxTableTest {
  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(20);

  @ParameterizedTest
  @CsvSource({"0.08, 0.3", "0.05, 0", "0.03, 1", "0.15, 0.1", "0.001, 100"})
  void isWithinSevenTenThousandthsAtEveryTemperature(double starch, double glycerol) {
    Composition paste = Castings.paste(starch, glycerol);
    PotentialReader reader = FilmMaterial.of(paste, paste.waterKgPerKgDry()).potential().reader();
    WaterDiffusivity diffusivity = WaterDiffusivity.in(paste);
    double wettest = paste.waterKgPerKgDry();
    for (double temperature = 273.15; temperature < 371.2; temperature += 3.5) {
      // Between a dry skin and the wet core, which is the flux that matters, and from the core up.
      assertClose(reader, diffusivity, 0.1, 0.35, temperature);
      assertClose(reader, diffusivity, 0.35, 0.5 * wettest, temperature);
      assertClose(reader, diffusivity, 0.5 * wettest, wettest, temperature);
    }
  }

  /** The reader's slopes with temperature against a central difference of its own weights. */
  @ParameterizedTest
  @ValueSource(doubles = {279, 291.7, 313.15, 340, 370})
  void weightsOfTheLayersHaveTheSlopesTheyAreSaidToHave(double temperatureK) {
    TemperatureLayers layers = new TemperatureLayers();
    double[] slopes = new double[layers.count()];
    double[] below = new double[layers.count()];
    double[] above = new double[layers.count()];
    layers.weightSlopes(temperatureK, slopes);
    layers.weights(temperatureK - 1e-3, below);
    layers.weights(temperatureK + 1e-3, above);
    for (int k = 0; k < layers.count(); k++) {
      assertThat(slopes[k]).isCloseTo((above[k] - below[k]) / 2e-3, within(1e-7));
    }
  }

  private static void assertClose(
      PotentialReader reader,
      WaterDiffusivity diffusivity,
      double from,
      double to,
      double temperatureK) {
    reader.goTo(temperatureK);
    double exact = integral(diffusivity, from, to, temperatureK);
    assertThat(reader.potential(to) - reader.potential(from))
        .as("X %s to %s at %s K", from, to, temperatureK)
        .isCloseTo(exact, org.assertj.core.data.Percentage.withPercentage(0.07));
  }

  /** The integral of D/v2 over X by Gauss quadrature in pieces. */
  private static double integral(
      WaterDiffusivity diffusivity, double from, double to, double temperatureK) {
    int pieces = 40;
    double sum = 0;
    for (int piece = 0; piece < pieces; piece++) {
      double low = from + (to - from) * piece / pieces;
      double width = (to - from) / pieces;
      sum +=
          GAUSS.integrate(
                  x -> {
                    double moisture = low + width * (x + 1) / 2;
                    double volume = diffusivity.volumeM3PerKgDry(moisture);
                    return diffusivity.m2PerS(moisture, temperatureK) / (volume * volume);
                  })
              * width
              / 2;
    }
    return sum;
  }
}
