package starchfilm.cli;

import java.nio.file.Path;
import starchfilm.web.Questions;

/** Gives tests of the pages what the commands answer. */
public final class CommandQuestions {
  private CommandQuestions() {}

  /**
   * The commands, at the test's fixed time.
   *
   * @param directory what relative paths start from
   * @return their answers
   */
  public static Questions over(Path directory) {
    return new TypedQuestions(new Terminal(directory).surroundings());
  }
}
