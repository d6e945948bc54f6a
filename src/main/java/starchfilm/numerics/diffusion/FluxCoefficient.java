package starchfilm.numerics.diffusion;

/**
 * The coefficient K of a flux {@code -K(u, s) du/dx}, where s is the lumped state beside the nodes.
 */
@FunctionalInterface
public interface FluxCoefficient {
  /**
   * The coefficient at one value of the unknown for every layer of the lumped state.
   *
   * @param value the unknown u
   * @param coefficientOfLayer filled with K, one a layer, each above 0
   */
  void fill(double value, double[] coefficientOfLayer);
}
