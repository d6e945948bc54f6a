package starchfilm.material.ingredient;

/**
 * Glycerol in the solution that keeps a relative humidity, by the formula of ASTM D5032-97, the
 * outside route that our own activity rule is held against.
 *
 * <p>{@code (G + A)^2 = (100 + A)^2 + A^2 - (H + A)^2; A = 25.60 - 0.1950 T + 0.0008 T^2}
 *
 * <p>G: glycerol (weight per cent); H: relative humidity (per cent); T: temperature (C). Scope of
 * the standard: 30 to 98 %, 0 to 70 C. Formula recalled.
 */
final class AstmD5032 {
  private AstmD5032() {}

  static double glycerolWeightPercent(double humidityPercent, double celsius) {
    double a = 25.60 - 0.1950 * celsius + 0.0008 * celsius * celsius;
    double right = (100 + a) * (100 + a) + a * a - (humidityPercent + a) * (humidityPercent + a);
    return Math.sqrt(right) - a;
  }

  static double humidityPercent(double glycerolWeightPercent, double celsius) {
    double a = 25.60 - 0.1950 * celsius + 0.0008 * celsius * celsius;
    double right =
        (100 + a) * (100 + a) + a * a - (glycerolWeightPercent + a) * (glycerolWeightPercent + a);
    return Math.sqrt(right) - a;
  }
}
