package starchfilm.numerics.diffusion;

/** Faces that exchange in proportion to the distance from a held value; the lumped state rests. */
final class LinearExchange implements FaceExchange {
  /**
   * One face.
   *
   * @param coefficient outflow per distance from the held value, 0 for a sealed face
   * @param held the value without outflow
   */
  record Face(double coefficient, double held) {
    static final Face SEALED = new Face(0, 0);

    double outflow(double value) {
      return coefficient * (value - held);
    }
  }

  private final Face lowerFace;
  private final Face upperFace;
  private double lowerOutflow;
  private double upperOutflow;

  LinearExchange(Face lowerFace, Face upperFace) {
    this.lowerFace = lowerFace;
    this.upperFace = upperFace;
  }

  @Override
  public void evaluate(double time, double lower, double upper, double mean, double border) {
    lowerOutflow = lowerFace.outflow(lower);
    upperOutflow = upperFace.outflow(upper);
  }

  @Override
  public void linearise(double time, double lower, double upper, double mean, double border) {
    // The slopes do not change.
  }

  @Override
  public double lowerOutflow() {
    return lowerOutflow;
  }

  @Override
  public double upperOutflow() {
    return upperOutflow;
  }

  @Override
  public double borderRate() {
    return 0;
  }

  @Override
  public double slope(Result of, Argument by) {
    if (of == Result.LOWER_OUTFLOW && by == Argument.LOWER) {
      return lowerFace.coefficient;
    }
    return of == Result.UPPER_OUTFLOW && by == Argument.UPPER ? upperFace.coefficient : 0;
  }
}
