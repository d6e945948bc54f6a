package starchfilm.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile;
import starchfilm.files.saving.TrialFileText;
import starchfilm.files.saving.WriteFailure;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PlannedTrial;
import starchfilm.request.PlanQuestion;

/** Writes planned recipes as trial files, each under a name that is still free. */
record PlanFiles(Asked asked) {
  /**
   * Writes them.
   *
   * @param typed the folder as typed; made where it is missing
   * @param question what was asked; a log of its room is copied beside the files
   * @return the names written, with the folder as typed
   */
  List<String> write(Path typed, List<NamedRecipe> recipes, PlanQuestion question) {
    Path folder = folder(typed);
    List<String> written = new ArrayList<>();
    try {
      Files.createDirectories(folder);
      if (question.log().isPresent()) {
        copyLog(question.log().get(), folder);
      }
      for (NamedRecipe recipe : recipes) {
        String text =
            PlannedTrial.text(recipe, question.request(), question.log(), question.isJarIn(folder));
        written.add(typed + "/" + TrialFileText.create(folder, recipe.title(), text).getFileName());
      }
    } catch (NotWrittenException refused) {
      throw CommandFailure.notComputed("--save " + typed + ": " + refused.getMessage());
    } catch (IOException failure) {
      throw CommandFailure.notComputed(
          "--save " + typed + ": " + WriteFailure.of(failure).sentence() + ".");
    }
    return written;
  }

  private Path folder(Path typed) {
    Path folder = asked.resolve(typed).toAbsolutePath();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw CommandFailure.wrongInput(
          "--save " + typed + " is a file; name a folder for the trial files");
    }
    return folder;
  }

  private static void copyLog(Path log, Path folder) throws IOException, NotWrittenException {
    Path copy = folder.resolve(String.valueOf(log.getFileName()));
    if (!Files.exists(copy)) {
      byte[] bytes = Files.readAllBytes(log);
      SafeFile.rewrite(copy, before -> bytes);
    } else if (Files.mismatch(copy, log) >= 0) {
      throw new NotWrittenException(
          List.of(
              Fault.of(
                  String.valueOf(log.getFileName()),
                  "",
                  "another log of this name in the folder",
                  "",
                  "rename one of the two, or choose another folder")));
    }
  }
}
