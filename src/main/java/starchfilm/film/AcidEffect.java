package starchfilm.film;

import starchfilm.evidence.Band;

/**
 * What the vinegar did while the paste cooked.
 *
 * @param pastePh pH of the paste; 7 without acid
 * @param chainCutsPerBond share of the bonds between glucose units that were cut
 * @param strengthFactor what the tensile strength is multiplied by (ratio, 0.5 to 1)
 */
public record AcidEffect(double pastePh, Band chainCutsPerBond, Band strengthFactor) {}
