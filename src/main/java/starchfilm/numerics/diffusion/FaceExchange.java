package starchfilm.numerics.diffusion;

/**
 * The exchange through the two faces, and how the lumped state beside the nodes moves.
 *
 * <p>{@link #evaluate} computes at one state, then the getters tell; {@link #linearise} computes
 * the partial derivatives there. One object serves one thread; neither call allocates.
 *
 * <p>An outflow depends on the unknown at its own face, the lumped state and the time only; its
 * slopes by other arguments are not read. It rises with the unknown at its face everywhere, below 0
 * too, where a coarse step may look: past a pole the unknown would run away from rest.
 */
public interface FaceExchange {
  /**
   * Computes the exchange at one state.
   *
   * @param time the time
   * @param lower the unknown at the lower face
   * @param upper the unknown at the upper face
   * @param mean the unknown averaged over the interval
   * @param border the lumped state
   */
  void evaluate(double time, double lower, double upper, double mean, double border);

  /**
   * Computes the partial derivatives of the exchange at the state last given to {@link #evaluate}.
   *
   * @param time the time given then
   * @param lower the unknown at the lower face given then
   * @param upper the unknown at the upper face given then
   * @param mean the average given then
   * @param border the lumped state given then
   */
  void linearise(double time, double lower, double upper, double mean, double border);

  /**
   * Returns the outflow through the lower face.
   *
   * @return outflow, negative inwards
   */
  double lowerOutflow();

  /**
   * Returns the outflow through the upper face.
   *
   * @return outflow, negative inwards
   */
  double upperOutflow();

  /**
   * How fast the lumped state moves.
   *
   * @return its rate
   */
  double borderRate();

  /**
   * One partial derivative, as {@link #linearise} computed it last.
   *
   * @param of which result
   * @param by which argument
   * @return the derivative
   */
  double slope(Result of, Argument by);

  /** A result that {@link #slope} differentiates. */
  enum Result {
    /** {@link #lowerOutflow}. */
    LOWER_OUTFLOW,
    /** {@link #upperOutflow}. */
    UPPER_OUTFLOW,
    /** {@link #borderRate}. */
    BORDER_RATE
  }

  /** An argument that {@link #slope} differentiates by. */
  enum Argument {
    /** The unknown at the lower face. */
    LOWER,
    /** The unknown at the upper face. */
    UPPER,
    /** The unknown's average. */
    MEAN,
    /** The lumped state. */
    BORDER,
    /** The time. */
    TIME
  }
}
