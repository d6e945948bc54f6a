package starchfilm.request;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Thrown where what was written cannot be meant, with a sentence for each mistake in the words of
 * the door.
 */
public final class RefusedRequestException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Mistake> mistakes;

  /**
   * A refusal.
   *
   * @param mistakes at least one
   */
  public RefusedRequestException(List<Mistake> mistakes) {
    super(mistakes.stream().map(Mistake::sentence).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  /**
   * A refusal of the whole.
   *
   * @param sentences what is wrong and how to fix it; at least one
   * @return to be thrown
   */
  public static RefusedRequestException of(List<String> sentences) {
    return new RefusedRequestException(
        sentences.stream().map(one -> new Mistake(Optional.empty(), one)).toList());
  }

  /** An answer; the domain refuses what cannot be in one sentence meant for the reader. */
  static <T> T orRefused(Supplier<T> answer) {
    try {
      return answer.get();
    } catch (IllegalArgumentException e) {
      throw of(List.of(String.valueOf(e.getMessage())));
    }
  }

  /** What is wrong, at least one mistake. */
  public List<Mistake> mistakes() {
    return mistakes;
  }

  /**
   * The sentences that say what is wrong and how to fix it.
   *
   * @return at least one sentence
   */
  public List<String> sentences() {
    return mistakes.stream().map(Mistake::sentence).toList();
  }
}
