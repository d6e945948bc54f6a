package starchfilm.numerics.diffusion;

/** Watches an integration. */
@FunctionalInterface
public interface StepListener {
  /**
   * Looks at an accepted step.
   *
   * @param step the step; valid during the call only
   * @return false to end the integration with this step
   */
  boolean accepted(Step step);
}
