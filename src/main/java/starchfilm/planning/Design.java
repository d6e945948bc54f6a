package starchfilm.planning;

import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.GlycerolStock;

/**
 * A recipe before it is rounded to the balance.
 *
 * @param starchInPaste dry starch (kg per kg paste after the cook)
 * @param plasticiser kg glycerol per kg dry starch
 * @param vinegarInPaste vinegar (kg per kg paste after the cook)
 * @param wetThicknessM wet thickness, averaged over the plate (m)
 */
record Design(
    StarchBlend blend,
    double starchInPaste,
    double plasticiser,
    double vinegarInPaste,
    double wetThicknessM,
    int plates) {

  /** The paste after the cook. */
  Composition composition(Supplies supplies) {
    GlycerolStock jar = supplies.jar();
    double glycerol = starchInPaste * plasticiser;
    double salt =
        glycerol == 0 ? 0 : glycerol * jar.saltFraction().value() / jar.glycerolFraction().value();
    double acid = vinegarInPaste * supplies.vinegarAcidityFraction();
    return Composition.of(
        blend.shares(),
        starchInPaste,
        glycerol,
        salt,
        acid,
        1 - starchInPaste - glycerol - salt - acid,
        0);
  }

  /** How its starch is cooked. */
  CookSteps cook() {
    return CookSteps.of(blend.shares());
  }

  Design poured(double otherThicknessM) {
    return new Design(blend, starchInPaste, plasticiser, vinegarInPaste, otherThicknessM, plates);
  }

  Design with(double otherStarch, double otherPlasticiser, double otherVinegar) {
    return new Design(blend, otherStarch, otherPlasticiser, otherVinegar, wetThicknessM, plates);
  }

  Design on(int otherPlates) {
    return new Design(
        blend, starchInPaste, plasticiser, vinegarInPaste, wetThicknessM, otherPlates);
  }

  /** Whether another design makes the same film of the same pour, within a few per cent. */
  boolean isNearly(Design other) {
    return plates == other.plates
        && blend.shares().equals(other.blend.shares())
        && near(wetThicknessM, other.wetThicknessM)
        && near(starchInPaste, other.starchInPaste)
        && Math.abs(plasticiser - other.plasticiser) < SAME_PLASTICISER;
  }

  private static final double SAME_RATIO = 0.08;
  private static final double SAME_PLASTICISER = 0.015;

  private static boolean near(double a, double b) {
    return Math.abs(Math.log(a / b)) < SAME_RATIO;
  }
}
