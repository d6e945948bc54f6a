package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.notebook.JarLevel;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialSchema;
import starchfilm.report.data.Answers;
import starchfilm.report.words.Plural;

/** Says everything that is wrong with trial files. */
@Command(
    name = "check",
    description = {
      "Check trial files and list everything that is wrong with them.",
      "",
      "Each fault names file, line, column and field, what is there, what is"
          + " allowed and how to fix it. Nothing is written."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFiles:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm check formulations/garden",
      "  starchfilm check --keys",
      "",
      "Exit codes: 0 no file has a fault, 2 a file has a fault."
    })
final class CheckCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Mixin private DataOptions dataOptions = new DataOptions();

  @Option(
      names = "--keys",
      help = true,
      description = "List every field of a trial file with its range, meaning and an example.")
  private boolean keys;

  @Option(
      names = "--schema",
      help = true,
      description = "Print the JSON Schema of a trial file, for editors.")
  private boolean schema;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE-OR-FOLDER",
      description = "Trial files, or folders of them.")
  private List<Path> paths = List.of();

  CheckCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (schema) {
      surroundings.out().printResult(TrialSchema.text());
      return ExitCodes.DONE;
    }
    if (keys) {
      TrialField.TRIAL.all().forEach(this::tell);
      surroundings.out().println("");
      surroundings.out().println("A kept jar is a file of its own (assay --keep):");
      TrialField.JAR.all().forEach(this::tell);
      return ExitCodes.DONE;
    }
    DataOptions.Places places = dataOptions.places(surroundings);
    Notebook notebook = TrialFiles.checked(paths, surroundings);
    places.write(() -> Answers.check(notebook));
    FirstFaults.sentences(notebook.faults()).forEach(surroundings.err()::println);
    if (places.isOnStandardOutput()) {
      return TrialFiles.exitCode(notebook, true);
    }
    TrialFiles.remarks(notebook).forEach(surroundings.out()::println);
    surroundings.out().printSentences(notebook.jars().stream().map(JarLevel::sentence).toList());
    int sound = notebook.trials().size();
    long faulty = notebook.faults().stream().map(fault -> fault.file()).distinct().count();
    surroundings
        .out()
        .println(
            Plural.of(sound, "trial")
                + " sound"
                + (faulty == 0
                    ? "."
                    : ", "
                        + Plural.of(faulty, "file")
                        + " with "
                        + Plural.of(notebook.faults().size(), "fault")
                        + "."));
    return TrialFiles.exitCode(notebook, true);
  }

  private void tell(TrialField field) {
    surroundings.out().println(field.path() + ": " + field.allowedWords());
    Paragraph.of(field.sentence(), "    ", "    ").forEach(surroundings.out()::println);
    surroundings.out().println("    " + field.written());
  }
}
