package starchfilm.numerics.diffusion;

/** An integration that could not go on: the sentence gives method, time reached and residual. */
public final class IntegrationFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  IntegrationFailure(String sentence) {
    super(sentence);
  }
}
