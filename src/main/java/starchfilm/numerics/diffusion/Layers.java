package starchfilm.numerics.diffusion;

/**
 * How a quantity that is tabulated at a few values of the lumped state (its layers) is interpolated
 * between them: a weighted sum of the layers.
 */
public interface Layers {
  /**
   * How many layers there are.
   *
   * @return at least 1
   */
  int count();

  /**
   * The weights of the layers at a value of the lumped state.
   *
   * @param border the lumped state
   * @param weights filled with one weight a layer
   */
  void weights(double border, double[] weights);

  /**
   * The derivatives of {@link #weights} with respect to the lumped state.
   *
   * @param border the lumped state
   * @param slopes filled with one derivative a layer
   */
  void weightSlopes(double border, double[] slopes);
}
