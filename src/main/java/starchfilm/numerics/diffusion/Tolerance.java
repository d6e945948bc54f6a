package starchfilm.numerics.diffusion;

/**
 * How far one step may be off.
 *
 * @param relative share of a node's value, above 0
 * @param node what is allowed at a node besides, in the unknown's unit, above 0
 * @param border what is allowed in the lumped state, in its unit, above 0
 */
public record Tolerance(double relative, double node, double border) {
  /** Refuses what no step could meet. */
  public Tolerance {
    if (!(relative > 0) || !(node > 0) || !(border > 0)) {
      throw new IllegalArgumentException(
          "tolerances must be above 0, not relative "
              + relative
              + ", node "
              + node
              + ", border "
              + border);
    }
  }
}
