package starchfilm.files.saving;

import java.nio.file.FileSystemException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import starchfilm.files.json.PackedText;

/**
 * The reason the system gave for not writing a file, in words for its owner.
 *
 * @param given what stands in the way
 * @param mend what was left as it was, and what to do
 */
public record WriteFailure(String given, String mend) {
  private static final List<List<String>> SAID =
      PackedText.rows(WriteFailure.class, "write-failures.words", 3);

  /**
   * The reason why a file could not be written.
   *
   * @param e what the system threw
   * @return the reason
   */
  public static WriteFailure of(Exception e) {
    String reason =
        e instanceof FileSystemException named && named.getReason() != null
            ? named.getReason()
            : String.valueOf(e.getMessage());
    String said = (e.getClass().getSimpleName() + " " + reason).toLowerCase(Locale.ROOT);
    return SAID.stream()
        .filter(row -> Pattern.compile(row.get(2)).matcher(said).find())
        .findFirst()
        .map(row -> new WriteFailure(row.get(0), row.get(1)))
        .orElseThrow();
  }

  /**
   * The reason in one sentence.
   *
   * @return such as {@code the disk is full; nothing was changed; make room and try again}
   */
  public String sentence() {
    return given + "; " + mend;
  }
}
