package starchfilm.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.data.Answers;
import starchfilm.report.learnt.LearntText;

/** Learns from the weighings and pulled strips of a folder. */
@Command(
    name = "learn",
    description = {
      "Learn from the weighings and pulled strips in a folder how your rooms"
          + " dry and your films hold, and say how sure that is.",
      "",
      "The result is kept in workshop.json beside the trials, and every"
          + " later forecast in that folder uses it. A wrong note is left"
          + " out and named, and so is a file whose recipe, plate or room is wrong;"
          + " the rest is used. Run it again whenever you have"
          + " more weighings."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFolder:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm learn formulations/garden",
      "",
      "Exit codes: 0 done, 1 nothing to learn from or nothing written, 2 a"
          + " file has a fault (the others were used)."
    })
final class LearnCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Mixin private DataOptions dataOptions = new DataOptions();

  @Parameters(paramLabel = "FOLDER", description = "The folder that holds your trial files.")
  private Path folder = Path.of("");

  LearnCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    DataOptions.Places places = dataOptions.places(surroundings);
    Path home = surroundings.resolve(folder);
    if (!Files.isDirectory(home)) {
      throw CommandFailure.wrongInput(
          folder + ": no folder; name the folder that holds your trials, such as learn .");
    }
    Notebook notebook = TrialFiles.read(List.of(folder), surroundings);
    TrialFiles.tell(notebook, surroundings);
    Workshops workshops = new Workshops(surroundings.clock());
    Workshop workshop = workshops.learn(home, notebook.trials(), () -> {});
    if (!workshop.isTaught()) {
      workshop
          .learnt()
          .leftOut()
          .forEach(left -> surroundings.err().println(left.file() + ": " + left.reason()));
      String sentence =
          "nothing to learn from: no trial without a fault in "
              + folder
              + " has weighings that can be used, or pulled strips; nothing written."
              + earlier(home);
      throw notebook.faults().isEmpty()
          ? CommandFailure.notComputed(sentence)
          : CommandFailure.wrongInput(sentence);
    }
    places.write(() -> Answers.learnt(workshop.learnt()));
    if (!places.isOnStandardOutput()) {
      surroundings.out().printSentences(LearntText.of(workshop.learnt()));
    }
    try {
      workshop.write();
    } catch (NotWrittenException e) {
      throw CommandFailure.notComputed(String.valueOf(e.getMessage()));
    }
    if (places.isOnStandardOutput()) {
      return TrialFiles.exitCode(notebook, true);
    }
    surroundings.out().println();
    surroundings
        .out()
        .println(
            "Kept in " + folder.resolve(Workshop.FILE_NAME) + "; forecasts use it from now on.");
    surroundings.out().printSentences(workshops.nearer(home, notebook.trials()));
    return TrialFiles.exitCode(notebook, true);
  }

  /** What is to be said of a workshop file that this folder no longer teaches anything for. */
  private String earlier(Path home) {
    Path kept = folder.resolve(Workshop.FILE_NAME);
    return Files.exists(home.resolve(Workshop.FILE_NAME))
        ? " " + kept + " is as it was; delete it to forecast from the textbook."
        : "";
  }
}
