package starchfilm.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.JarFile;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile.WrittenFile;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.report.plan.AssaySheet;
import starchfilm.request.AssayRequest;

/** Says what is in a jar of glycerol. */
record AssayCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    AssayRequest request = AssayRequest.read(asked.entries());
    Assay assay = request.answer();
    Results results = asked.results();
    results.show(new AssaySheet(assay, request.assumptions()));
    asked.path("keep.keep").ifPresent(name -> keep(name, assay, results));
    return ExitCodes.DONE;
  }

  private void keep(Path typed, Assay assay, Results results) {
    JarContent content =
        assay
            .content()
            .orElseThrow(
                () ->
                    CommandFailure.notComputed(
                        "--keep "
                            + typed
                            + ": not kept, because the figures contradict each other."));
    try {
      Path path = asked.resolve(typed).toAbsolutePath();
      WrittenFile written =
          JarFile.keep(
              path.resolveSibling(""),
              String.valueOf(path.getFileName()),
              assay.massKg(),
              content.stock(assay.origin()),
              LocalDateTime.now(asked.clock()));
      List<String> said = new ArrayList<>(written.remarks());
      said.add(
          """
          Kept as %s.jar.json%s. Take from it with "jar": "%s" under glycerol in a trial, or plan \
          --jar %s.\
          """
              .formatted(
                  typed,
                  written
                      .before()
                      .map(before -> "; the jar before is in " + before.getFileName())
                      .orElse(""),
                  path.getFileName(),
                  typed));
      results.remarks().printSentences(said);
    } catch (NotWrittenException refused) {
      Fault why = refused.faults().get(0);
      throw CommandFailure.wrongInput(
          "--keep " + typed + ": " + why.given() + "; " + why.mend() + ".");
    }
  }
}
