package starchfilm.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.learnt.LearntSheet;

/** Learns from the weighings and pulled strips of a folder. */
record LearnCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() throws NotWrittenException {
    Results results = asked.results();
    Path folder = asked.path("folder.folder").orElseThrow();
    Path home = asked.resolve(folder);
    if (!Files.isDirectory(home)) {
      throw CommandFailure.wrongInput(
          folder + ": no folder; name the folder that holds your trials, such as learn .");
    }
    TrialFiles files = TrialFiles.read(asked, List.of(folder));
    files.tell();
    Workshops workshops = new Workshops(asked.clock());
    Workshop workshop = workshops.learn(home, files.trials(), () -> {});
    if (!workshop.isTaught()) {
      workshop
          .learnt()
          .leftOut()
          .forEach(left -> asked.err().println(left.file() + ": " + left.reason()));
      String sentence =
          """
          nothing to learn from: no trial without a fault in %s has weighings that can be used, or \
          pulled strips; nothing written.%s\
          """
              .formatted(folder, earlier(folder, home));
      throw files.notebook().faults().isEmpty()
          ? CommandFailure.notComputed(sentence)
          : CommandFailure.wrongInput(sentence);
    }
    results.show(new LearntSheet(workshop.learnt()));
    Optional<String> replaced = workshop.replaces();
    workshop.write();
    Path kept = folder.resolve(Workshop.FILE_NAME);
    results.print(
        List.of("", "Kept in " + kept + "; forecasts use it from now on."),
        replaced.stream().toList(),
        workshops.nearer(home, files.trials()));
    return files.exitCode(true);
  }

  /** What is to be said of a workshop file that this folder no longer teaches anything for. */
  private static String earlier(Path folder, Path home) {
    Path kept = folder.resolve(Workshop.FILE_NAME);
    return Files.exists(home.resolve(Workshop.FILE_NAME))
        ? " " + kept + " is as it was; delete it to forecast from the textbook."
        : "";
  }
}
