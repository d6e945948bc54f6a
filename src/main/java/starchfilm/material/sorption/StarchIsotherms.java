package starchfilm.material.sorption;

import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The isotherm of each starch near 25 C, one row a kind.
 *
 * <p>Where adsorption and desorption were distinguished, the row is desorption: a film is drying.
 * Recalled rows are good to some 10 to 15 %; a kind's cultivar and cooking move it as much. What
 * temperature does is {@link FilmIsotherm#warmth}.
 */
final class StarchIsotherms {
  private static final GabIsotherm CORN =
      new GabIsotherm(
          0.085,
          20,
          0.77,
          new Source(
              "corn starch: Iglesias and Chirife 1982, Handbook of Food Isotherms, Academic Press",
              Check.RECALLED));

  private static final GabIsotherm WAXY_CORN =
      new GabIsotherm(
          CORN.monolayer(),
          CORN.bindingRatio(),
          CORN.multilayerRatio(),
          new Source("waxy corn starch: as corn starch; assumed, no source", Check.JUDGED));

  private static final GabIsotherm HIGH_AMYLOSE_CORN =
      new GabIsotherm(
          0.085,
          15,
          0.79,
          new Source(
              "high-amylose corn starch: Al-Muhtaseb, McMinn and Magee 2004, J. Food Eng. 61:297",
              Check.RECALLED));

  private static final GabIsotherm POTATO =
      new GabIsotherm(
          0.090,
          20,
          0.75,
          new Source(
              "potato starch: form of van den Berg 1981, Vapour Sorption Equilibria and Other"
                  + " Water-Starch Interactions, thesis, Wageningen (recalled), its first layer 0.10"
                  + " lowered to 0.09 so that cast film holds 14.8 % at 57 % relative humidity:"
                  + " Lourdin et al. 1997, Polymer 38:5401",
              Check.READ));

  private static final GabIsotherm TAPIOCA =
      new GabIsotherm(
          0.090,
          20,
          0.77,
          new Source("tapioca starch: compiled isotherms of cassava starch", Check.RECALLED));

  private static final GabIsotherm WHEAT =
      new GabIsotherm(
          0.090,
          20,
          0.76,
          new Source(
              "wheat starch: van den Berg 1981, Vapour Sorption Equilibria and Other Water-Starch"
                  + " Interactions, thesis, Wageningen",
              Check.RECALLED));

  private static final GabIsotherm RICE =
      new GabIsotherm(
          0.0800,
          36.43,
          0.7646,
          new Source(
              "rice starch, desorption at 25 C: Science and Technology of Food Industry 2014(10),"
                  + " doi 10.13386/j.issn1002-0306.2014.10.036",
              Check.READ));

  private StarchIsotherms() {}

  /**
   * The row of a kind.
   *
   * @param kind the starch
   * @return its isotherm
   */
  static GabIsotherm of(StarchKind kind) {
    return switch (kind) {
      case CORN -> CORN;
      case WAXY_CORN -> WAXY_CORN;
      case HIGH_AMYLOSE_CORN -> HIGH_AMYLOSE_CORN;
      case POTATO -> POTATO;
      case TAPIOCA -> TAPIOCA;
      case WHEAT -> WHEAT;
      case RICE -> RICE;
    };
  }
}
