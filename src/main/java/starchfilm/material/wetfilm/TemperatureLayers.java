package starchfilm.material.wetfilm;

import starchfilm.numerics.diffusion.Layers;
import starchfilm.numerics.units.Nature;

/**
 * Four temperatures, 2 to 95 C and equally spaced in 1/T, at which the flux potential is tabulated.
 *
 * <p>Between them {@code P(T) = sum w_k(T) P(T_k)} with {@code w_k = L_k(1/T) exp[-(E_m/R)(1/T -
 * 1/T_k)]}: Lagrange's polynomials act on what is left after an Arrhenius factor of middle energy
 * E_m = 27 kJ/mol. The energies in a film run from 18 to 36 kJ/mol, so what is left bends little:
 * from 0 to 98 C the potential is within 7e-4.
 */
final class TemperatureLayers implements Layers {
  private static final int COUNT = 4;
  private static final double COLDEST_K = 275.15;
  private static final double WARMEST_K = 368.15;
  private static final double MIDDLE_ENERGY_J_PER_MOL = 27_000;
  private static final double MIDDLE_OVER_GAS =
      MIDDLE_ENERGY_J_PER_MOL / Nature.GAS_CONSTANT_J_PER_MOL_K;

  private final double[] inverseK = new double[COUNT];
  private final double[] scale = new double[COUNT];
  private final double spacing = (1 / COLDEST_K - 1 / WARMEST_K) / (COUNT - 1);

  TemperatureLayers() {
    for (int k = 0; k < COUNT; k++) {
      inverseK[k] = 1 / WARMEST_K + k * spacing;
      double denominator = 1;
      for (int j = 0; j < COUNT; j++) {
        if (j != k) {
          denominator *= (k - j);
        }
      }
      scale[k] = Math.exp(MIDDLE_OVER_GAS * (inverseK[k] - inverseK[0])) / denominator;
    }
  }

  double inverseK(int layer) {
    return inverseK[layer];
  }

  double inverseSpacing() {
    return spacing;
  }

  @Override
  public int count() {
    return COUNT;
  }

  @Override
  public void weights(double temperatureK, double[] weights) {
    double place = (1 / temperatureK - inverseK[0]) / spacing;
    double arrhenius = Math.exp(-MIDDLE_OVER_GAS * (1 / temperatureK - inverseK[0]));
    for (int k = 0; k < COUNT; k++) {
      double product = 1;
      for (int j = 0; j < COUNT; j++) {
        if (j != k) {
          product *= place - j;
        }
      }
      weights[k] = scale[k] * arrhenius * product;
    }
  }

  @Override
  public void weightSlopes(double temperatureK, double[] slopes) {
    double inverse = 1 / temperatureK;
    double place = (inverse - inverseK[0]) / spacing;
    double arrhenius = Math.exp(-MIDDLE_OVER_GAS * (inverse - inverseK[0]));
    double inverseByT = -inverse * inverse;
    for (int k = 0; k < COUNT; k++) {
      double product = 1;
      double derivative = 0;
      for (int j = 0; j < COUNT; j++) {
        if (j != k) {
          derivative = derivative * (place - j) + product;
          product *= place - j;
        }
      }
      slopes[k] =
          scale[k] * arrhenius * inverseByT * (derivative / spacing - MIDDLE_OVER_GAS * product);
    }
  }
}
