package starchfilm.learning;

/** The weighings of one plate cannot be fitted; the message says why in one sentence. */
final class UnsettledFitException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  UnsettledFitException(String sentence) {
    super(sentence);
  }
}
