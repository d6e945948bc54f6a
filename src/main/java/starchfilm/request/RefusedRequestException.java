package starchfilm.request;

import java.util.List;
import java.util.function.Supplier;

/**
 * Thrown where what was written cannot be meant, with a sentence for each mistake in the words of
 * the door.
 */
public final class RefusedRequestException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal.
   *
   * @param sentences what is wrong and how to fix it; at least one
   */
  public RefusedRequestException(List<String> sentences) {
    super(String.join("\n", sentences));
  }

  /** An answer; the domain refuses what cannot be in one sentence meant for the reader. */
  static <T> T orRefused(Supplier<T> answer) {
    try {
      return answer.get();
    } catch (IllegalArgumentException e) {
      throw new RefusedRequestException(List.of(String.valueOf(e.getMessage())));
    }
  }

  /**
   * The sentences that say what is wrong and how to fix it.
   *
   * @return at least one sentence
   */
  public List<String> sentences() {
    return String.valueOf(getMessage()).lines().toList();
  }
}
