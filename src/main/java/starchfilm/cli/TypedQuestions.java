package starchfilm.cli;

import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import starchfilm.jar.assay.Assay;
import starchfilm.web.Questions;

/** Answers the pages' questions with the commands themselves. */
final class TypedQuestions implements Questions {
  private final CommandContext surroundings;

  TypedQuestions(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Assay assay(List<String> words) {
    AssayCommand command = new AssayCommand(surroundings);
    return answered(command, words, command::assay);
  }

  @Override
  public Planned plan(List<String> words) {
    PlanCommand command = new PlanCommand(surroundings);
    return answered(command, words, command::planned);
  }

  private static <T> T answered(Object command, List<String> words, Supplier<T> answer) {
    try {
      // A word beginning with @ would be read from a file.
      new CommandLine(command).setExpandAtFiles(false).parseArgs(words.toArray(String[]::new));
      return answer.get();
    } catch (ParameterException | CommandFailure | IllegalArgumentException e) {
      throw new NotAnswered(String.valueOf(e.getMessage()));
    }
  }
}
