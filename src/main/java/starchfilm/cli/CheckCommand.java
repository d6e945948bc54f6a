package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.notebook.JarLevel;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialSchema;
import starchfilm.learning.Workshops;
import starchfilm.numerics.units.Plural;
import starchfilm.report.data.CheckedFiles;

/** Says everything that is wrong with trial files. */
record CheckCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    if (asked.has("check.schema")) {
      asked.out().printResult(TrialSchema.text());
      return ExitCodes.DONE;
    }
    if (asked.has("check.keys")) {
      TrialField.TRIAL.all().forEach(this::tell);
      asked.out().println("");
      asked.out().println("A kept jar is a file of its own (assay --keep):");
      TrialField.JAR.all().forEach(this::tell);
      return ExitCodes.DONE;
    }
    List<Path> files = asked.paths("checked.files");
    if (files.isEmpty()) {
      throw CommandFailure.wrongInput("no file named; write FILE-OR-FOLDER");
    }
    Results results = asked.results();
    Notebook notebook = TrialFiles.checked(asked, files);
    List<Fault> faults =
        Stream.concat(
                notebook.faults().stream(),
                new Workshops(asked.clock()).faults(notebook.trials()).stream())
            .toList();
    int exitCode = faults.isEmpty() ? ExitCodes.DONE : ExitCodes.WRONG_INPUT;
    results.write(() -> CheckedFiles.table(notebook));
    FirstFaults.sentences(faults).forEach(asked.err()::println);
    if (results.areOnStandardOutput()) {
      return exitCode;
    }
    TrialFiles.remarks(notebook).forEach(asked.out()::println);
    Workshops.copies(notebook.trials()).forEach(asked.out()::println);
    asked.out().printSentences(notebook.jars().stream().map(JarLevel::sentence).toList());
    int sound = notebook.trials().size();
    long faulty = faults.stream().map(Fault::file).distinct().count();
    String found = Plural.of(faults.size(), "fault");
    asked
        .out()
        .println(
            Plural.of(sound, "trial")
                + " sound"
                + (faulty == 0 ? "." : ", " + Plural.of(faulty, "file") + " with " + found + "."));
    return exitCode;
  }

  private void tell(TrialField field) {
    asked.out().println(field.path() + ": " + field.allowedWords());
    Paragraph.of(field.sentence(), "    ", "    ").forEach(asked.out()::println);
    asked.out().println("    " + field.written());
  }
}
