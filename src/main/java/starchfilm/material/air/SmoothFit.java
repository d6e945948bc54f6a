package starchfilm.material.air;

import java.util.function.DoubleUnaryOperator;

/**
 * A polynomial of the fourth degree through a property of air, in place of the powers that would
 * cost most of an evaluation.
 *
 * <p>It meets the property at the five Chebyshev points of {@value #FROM_K} to {@value #TO_K} K.
 * For the properties of this package it stays within 5e-4 of them there (the Rayleigh group; the
 * others 1e-5), and runs on smoothly beyond.
 *
 * @param c0 coefficient of 1
 * @param c1 coefficient of the position
 * @param c2 coefficient of the position squared
 * @param c3 coefficient of the position cubed
 * @param c4 coefficient of its fourth power
 */
record SmoothFit(double c0, double c1, double c2, double c3, double c4) {
  static final double FROM_K = 258.15;
  static final double TO_K = 373.15;
  private static final double MIDDLE_K = (FROM_K + TO_K) / 2;
  private static final double PER_HALF_WIDTH = 2 / (TO_K - FROM_K);
  private static final int POINTS = 5;

  /**
   * Fits a property.
   *
   * @param property the property as a function of temperature (K)
   * @return the polynomial
   */
  static SmoothFit of(DoubleUnaryOperator property) {
    double[] chebyshev = new double[POINTS];
    for (int k = 0; k < POINTS; k++) {
      double sum = 0;
      for (int j = 0; j < POINTS; j++) {
        double angle = Math.PI * (j + 0.5) / POINTS;
        double temperatureK = MIDDLE_K + Math.cos(angle) / PER_HALF_WIDTH;
        sum += property.applyAsDouble(temperatureK) * Math.cos(k * angle);
      }
      chebyshev[k] = sum * (k == 0 ? 1.0 : 2.0) / POINTS;
    }
    // T0 = 1, T1 = x, T2 = 2x2 - 1, T3 = 4x3 - 3x, T4 = 8x4 - 8x2 + 1
    return new SmoothFit(
        chebyshev[0] - chebyshev[2] + chebyshev[4],
        chebyshev[1] - 3 * chebyshev[3],
        2 * chebyshev[2] - 8 * chebyshev[4],
        4 * chebyshev[3],
        8 * chebyshev[4]);
  }

  /**
   * Where a temperature lies in the fitted range; the same for every fit, so it is formed once.
   *
   * @param temperatureK temperature (K)
   * @return -1 at the lower end, 1 at the upper
   */
  static double position(double temperatureK) {
    return (temperatureK - MIDDLE_K) * PER_HALF_WIDTH;
  }

  /**
   * The property.
   *
   * @param x position, from {@link #position}
   * @return the property, in its own unit
   */
  double at(double x) {
    return c0 + x * (c1 + x * (c2 + x * (c3 + x * c4)));
  }
}
