package starchfilm.numerics.diffusion;

/**
 * A system of ordinary differential equations whose Jacobian is tridiagonal with a border.
 *
 * <p>A state is an array of {@code nodes() + 2} numbers: the unknown at the nodes, the lumped state
 * beside them, and a tally, which adds up what has left through the faces and feeds back to
 * nothing.
 */
public interface BorderedSystem {
  /**
   * How many nodes there are.
   *
   * @return at least 3
   */
  int nodes();

  /**
   * The rates of a state.
   *
   * @param time the time
   * @param state the state
   * @param rates filled with the rates
   */
  void rates(double time, double[] state, double[] rates);

  /**
   * The Jacobian of the rates, and their change with time alone, at the state whose {@link #rates}
   * were computed last: what they have in common is not computed twice.
   *
   * @param time the time given then
   * @param state the state given then
   * @param jacobian filled
   * @param timeSlope filled with the partial derivatives of the rates with respect to time
   */
  void linearise(double time, double[] state, BorderedTridiagonal jacobian, double[] timeSlope);
}
