package starchfilm.material.sorption;

import starchfilm.numerics.evidence.Source;

/**
 * Moisture of a starch by the isotherm of Guggenheim, Anderson and de Boer.
 *
 * <p>{@code X = X_m C K a/((1 - K a)(1 - K a + C K a))}
 *
 * <p>Valid for: water activity 0.1 to 0.9. Outside: runs on smoothly and stays bounded at 1.
 *
 * <p>Source of the form: van den Berg and Bruin 1981, in Water Activity: Influences on Food
 * Quality, Academic Press (recalled).
 *
 * @param monolayer X_m, moisture of the first layer (kg water per kg dry starch)
 * @param bindingRatio C, how much tighter the first layer is held than the others (ratio)
 * @param multilayerRatio K, how the further layers compare with liquid water (ratio, below 1)
 * @param source where the three constants come from
 */
record GabIsotherm(double monolayer, double bindingRatio, double multilayerRatio, Source source) {
  /**
   * Moisture content.
   *
   * @param activity water activity (ratio, 0 to 1)
   * @return kg water per kg dry starch
   */
  double moisture(double activity) {
    double ka = multilayerRatio * activity;
    double free = 1 - ka;
    return monolayer * bindingRatio * ka / (free * (free + bindingRatio * ka));
  }
}
