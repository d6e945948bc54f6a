package starchfilm.film;

import starchfilm.numerics.evidence.Band;

/**
 * The effect of the vinegar while the paste cooked.
 *
 * @param pastePh pH of the paste; 7 without acid
 * @param chainCutsPerBond share of the bonds between glucose units that were cut
 * @param strengthFactor what the tensile strength is multiplied by (ratio, 0.5 to 1)
 */
public record AcidEffect(double pastePh, Band chainCutsPerBond, Band strengthFactor) {
  private static final double AMYLOPECTIN_LENGTH = 1e6;

  /**
   * Weight-average chain length that is left of the amylopectin, which gives the paste its body.
   *
   * <p>{@code 1/DPw = 1/DPw0 + s/2}; DPw0: 1e6; s: cuts per bond. So the paste thins long before
   * the film weakens.
   *
   * <p>Source: random scission, e.g. Tanford 1961, Physical Chemistry of Macromolecules, section 33
   * (recalled); DPw0 recalled, order of magnitude.
   *
   * @return glucose units a molecule, at the middle of the band of cuts
   */
  public double amylopectinLength() {
    return 1 / (1 / AMYLOPECTIN_LENGTH + chainCutsPerBond.middle() / 2);
  }

  /**
   * Share of the amylopectin's length that is left.
   *
   * @return ratio, above 0 to 1
   */
  public double amylopectinLengthLeft() {
    return amylopectinLength() / AMYLOPECTIN_LENGTH;
  }
}
