package starchfilm.change;

/** Why more of an ingredient leaves a property as it is. */
public enum NoEffectReason {
  /** Water leaves while drying. */
  WATER_LEAVES,
  /** The acid leaves with the water. */
  ACID_LEAVES,
  /** Cuts too few chains. */
  FEW_CUTS,
  /** The acid acts through cut chains, and no figure for that is known. */
  NO_FIGURE,
  /** The pH comes from acid and water. */
  NOT_ACID,
  /** Moves by less than the page can show. */
  TOO_SMALL
}
