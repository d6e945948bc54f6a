package starchfilm.numerics.diffusion;

/** The polynomial through all layers (Lagrange), exact where the coefficient is one. */
record PolynomialLayers(double... places) implements Layers {
  @Override
  public int count() {
    return places.length;
  }

  @Override
  public void weights(double border, double[] weights) {
    for (int i = 0; i < places.length; i++) {
      weights[i] = product(border, i, i);
    }
  }

  @Override
  public void weightSlopes(double border, double[] slopes) {
    for (int i = 0; i < places.length; i++) {
      slopes[i] = 0;
      for (int j = 0; j < places.length; j++) {
        if (j != i) {
          slopes[i] += product(border, i, j) / (places[i] - places[j]);
        }
      }
    }
  }

  /** The product over all other layers but one. */
  private double product(double border, int layer, int leftOut) {
    double product = 1;
    for (int j = 0; j < places.length; j++) {
      if (j != layer && j != leftOut) {
        product *= (border - places[j]) / (places[layer] - places[j]);
      }
    }
    return product;
  }
}
