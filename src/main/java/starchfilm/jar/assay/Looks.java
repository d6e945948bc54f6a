package starchfilm.jar.assay;

/** How a jar looks against the light; what to do about it is common practice, no source. */
public enum Looks {
  /** One clear liquid. */
  CLEAR(""),
  /** Oil, soap or solids in fine drops. */
  MILKY(
      "oil, soap or solids are in it as fine drops, and a reading is of the mixture: let it stand"
          + " closed in a warm room for two days, filter a sample through paper, and read that when"
          + " it is clear"),
  /** Liquids on top of each other. */
  LAYERS(
      "oil or fatty acid floats on it, and a reading shows whichever layer"
          + " was sampled: let it settle, draw the clear lower layer off, weigh it"
          + " by itself and read that");

  private final String whatToDo;

  Looks(String whatToDo) {
    this.whatToDo = whatToDo;
  }

  /**
   * Why such a jar cannot be read, and what settles it.
   *
   * @return part of a sentence; empty for a clear jar
   */
  public String whatToDo() {
    return whatToDo;
  }
}
