package starchfilm.change;

/** Why more of an ingredient leaves a property as it is. */
public enum NoEffectReason {
  /** Water leaves while drying. */
  WATER_LEAVES("water leaves while the film dries, so the dry film is made of the same things"),
  /** The acid leaves with the water. */
  ACID_LEAVES("the acid leaves with the water and is not part of the dry film"),
  /** Cuts too few chains. */
  FEW_CUTS(
      "this acid, time and temperature cut too few chains to show; a longer or hotter cook does"),
  /** The acid acts through cut chains, and no figure for that is known. */
  NO_FIGURE("the acid acts only through the chains it cuts, and no figure for that is published"),
  /** The pH comes from acid and water. */
  NOT_ACID("the pH comes from acid and water"),
  /** Moves by less than the page can show. */
  TOO_SMALL("it changes too little to matter");

  private final String words;

  NoEffectReason(String words) {
    this.words = words;
  }

  /**
   * The reason as a clause that can follow "because".
   *
   * @return plain words, lower case, no full stop
   */
  public String words() {
    return words;
  }
}
