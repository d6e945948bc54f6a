package starchfilm.request;

import java.util.List;

/** What was written cannot be meant; a sentence for each mistake, in the words of the door. */
public final class RefusedRequestException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String[] sentences;

  RefusedRequestException(List<String> sentences) {
    super(String.join("\n", sentences));
    this.sentences = sentences.toArray(String[]::new);
  }

  /**
   * What is wrong and how to fix it.
   *
   * @return at least one sentence
   */
  public List<String> sentences() {
    return List.of(sentences);
  }
}
