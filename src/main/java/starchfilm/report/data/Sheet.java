package starchfilm.report.data;

import java.util.List;

/**
 * An answer in the reader's units: every door takes from it what it shows, so that a terminal, a
 * page and other programs are told the same.
 */
public interface Sheet {
  /**
   * For a terminal.
   *
   * @return plain lines that need no colour; long sentences are not broken
   */
  List<String> lines();

  /** For other programs, as one object. */
  String json();

  /** For other programs, as a table. */
  String csv();

  /** An answer whose figures stand in rows of documented keys. */
  interface OfRows extends Sheet {
    /** Its figures. */
    AnswerTable table();

    @Override
    default String json() {
      return table().json();
    }

    @Override
    default String csv() {
      return table().csv();
    }
  }
}
