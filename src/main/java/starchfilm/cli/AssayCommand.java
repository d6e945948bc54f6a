package starchfilm.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.JarFile;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile.WrittenFile;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.numerics.evidence.Source;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.Answers;
import starchfilm.report.plan.AssaySheet;
import starchfilm.request.AssayRequest;

/** Says what is in a jar of glycerol. */
record AssayCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() {
    AssayRequest request = AssayRequest.read(asked.entries());
    Assay assay = request.answer();
    Results results = asked.results();
    results.write(() -> Answers.assay(assay, request.assumptions(), Cautions.of(assay)));
    results.print(text(new AssaySheet(assay), request.assumptions()));
    asked.path("keep.keep").ifPresent(name -> keep(name, assay, results));
    return ExitCodes.DONE;
  }

  private static List<String> text(AssaySheet sheet, List<String> assumptions) {
    Assay assay = sheet.assay();
    List<String> lines = new ArrayList<>();
    lines.add(
        assay
            .withheld()
            .map(why -> "Withheld. " + why)
            .orElse("In the jar (middle, and the range that holds in 8 of 10 likely cases):"));
    for (AssaySheet.Row row : sheet.rows()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %-15s %8s %-2s (%s to %s)",
              row.what(),
              row.middle(),
              row.unit().symbol(),
              row.low(),
              row.high()));
    }
    if (!sheet.salt().isEmpty()) {
      lines.addAll(List.of("", sheet.salt()));
    }
    sheet.saltLimits().forEach(limit -> lines.add("  - " + limit));
    section(lines, "What the figures say:", assay.remarks());
    section(lines, "Assumed:", assumptions);
    section(lines, "Take care:", Cautions.of(assay).stream().map(Caution::sentence).toList());
    section(lines, "Sources:", assay.sources().stream().map(Source::citation).toList());
    return lines;
  }

  private static void section(List<String> lines, String heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      lines.addAll(List.of("", heading));
      sentences.forEach(sentence -> lines.add("  - " + sentence));
    }
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
