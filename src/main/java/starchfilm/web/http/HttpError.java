package starchfilm.web.http;

/** A request that is not carried out; the message is the sentence the reader gets. */
public final class HttpError extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final boolean isToStranger;

  /**
   * A refusal.
   *
   * @param status HTTP status, 400 or above
   * @param sentence what is wrong and how to mend it
   */
  public HttpError(int status, String sentence) {
    this(status, sentence, false);
  }

  private HttpError(int status, String sentence, boolean isToStranger) {
    super(sentence);
    this.status = status;
    this.isToStranger = isToStranger;
  }

  /** A refusal of somebody who may not see a page of ours: the sentence and nothing else. */
  static HttpError toStranger(int status, String sentence) {
    return new HttpError(status, sentence, true);
  }

  boolean isToStranger() {
    return isToStranger;
  }

  /**
   * What was asked for is not there.
   *
   * @param sentence what is missing and where to go instead
   * @return a refusal with status 404
   */
  public static HttpError notFound(String sentence) {
    return new HttpError(404, sentence);
  }

  /**
   * What was sent cannot be read.
   *
   * @param sentence what is wrong and how to mend it
   * @return a refusal with status 400
   */
  public static HttpError malformed(String sentence) {
    return new HttpError(400, sentence);
  }

  /**
   * The HTTP status.
   *
   * @return 400 or above
   */
  public int status() {
    return status;
  }

  /**
   * The sentence for the reader.
   *
   * @return never empty
   */
  public String sentence() {
    return String.valueOf(getMessage());
  }
}
