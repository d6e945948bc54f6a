package starchfilm.numerics.diffusion;

/** One layer: the coefficient does not depend on the lumped state. */
record SingleLayer() implements Layers {
  @Override
  public int count() {
    return 1;
  }

  @Override
  public void weights(double border, double[] weights) {
    weights[0] = 1;
  }

  @Override
  public void weightSlopes(double border, double[] slopes) {
    slopes[0] = 0;
  }
}
