package starchfilm.numerics.diffusion;

/** Watches an integration. */
@FunctionalInterface
public interface StepListener {
  /**
   * Looks at an accepted step; may ask for it again by {@link Step#retryUntil}, and is then shown
   * the shorter one.
   *
   * @param step the step; valid during the call only
   * @return false to end the integration with this step
   */
  boolean accepted(Step step);
}
