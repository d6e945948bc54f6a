package starchfilm.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.files.saving.TrialTree;

/**
 * The one trial a command is about: out of a file, out of options, or a file with options over it.
 */
final class OneTrial {
  private final CommandContext surroundings;

  OneTrial(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  /**
   * Reads it; faults and notices go to standard error.
   *
   * @param file the file, if one was named
   * @param options what was given beside it
   * @param command the command's name, for the sentences
   * @param needs what it needs at least, for the sentence
   * @return the trial
   */
  Trial read(@Nullable Path file, RecipeOptions options, String command, String needs) {
    return read(file, options, new WeighingOptions(), command, needs);
  }

  /**
   * Reads it with weighings added to those of the file.
   *
   * @param file the file, if one was named
   * @param options what was given beside it
   * @param weighed weighings typed beside it
   * @param command the command's name, for the sentences
   * @param needs what it needs at least, for the sentence
   * @return the trial
   */
  Trial read(
      @Nullable Path file,
      RecipeOptions options,
      WeighingOptions weighed,
      String command,
      String needs) {
    weighed.requireWhole();
    Notebook notebook = notebook(file, options, weighed, command, needs);
    FirstFaults.sentences(notebook.faults()).forEach(surroundings.err()::println);
    notebook.notices().forEach(notice -> surroundings.err().println(notice.sentence()));
    if (notebook.trials().size() == 1) {
      return notebook.trials().get(0);
    }
    throw CommandFailure.wrongInput(
        notebook.faults().isEmpty()
            ? command + " takes one trial, and " + file + " holds " + notebook.trials().size() + "."
            : "no forecast without a sound trial.");
  }

  private Notebook notebook(
      @Nullable Path file,
      RecipeOptions options,
      WeighingOptions weighed,
      String command,
      String needs) {
    if (file == null) {
      if (options.isEmpty()) {
        throw CommandFailure.wrongInput(command + " needs " + needs + ".");
      }
      ObjectNode trial = JsonNodeFactory.instance.objectNode().put("name", "as typed");
      return asTyped(Path.of("as-typed"), trial, options, weighed);
    }
    Notebook notebook = TrialFiles.read(List.of(file), surroundings);
    boolean asItStands = options.isEmpty() && weighed.isEmpty();
    if (asItStands || notebook.trials().size() != 1 || !notebook.faults().isEmpty()) {
      return notebook;
    }
    Path path = notebook.trials().get(0).file();
    try {
      ObjectNode trial = TrialTree.of(TrialFileText.of(path).text());
      if (!options.isEmpty()) {
        // What happened to the real plate says nothing about the one that is asked for.
        trial.remove(List.of("weighings", "faults", "pulls", "dry_thickness_um", "rating"));
      }
      return asTyped(path, trial, options, weighed);
    } catch (NotWrittenException changed) {
      throw CommandFailure.wrongInput(file + ": changed while it was read; try again.");
    }
  }

  private Notebook asTyped(
      Path place, ObjectNode trial, RecipeOptions options, WeighingOptions weighed) {
    Notebook read =
        NotebookReader.readText(
            surroundings.resolve(place), TrialTree.text(weighed.over(options.over(trial))));
    return new Notebook(
        read.trials(), read.faults().stream().map(OneTrial::typed).toList(), read.notices());
  }

  /** What was typed has no lines; its fault must not send the reader to one. */
  private static Fault typed(Fault fault) {
    return new Fault(
        "as typed",
        OptionalInt.empty(),
        OptionalInt.empty(),
        fault.field(),
        fault.given(),
        fault.allowed(),
        fault.mend());
  }
}
