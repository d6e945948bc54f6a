package starchfilm.cli;

import java.io.PrintWriter;
import java.util.List;
import starchfilm.numerics.evidence.Source;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.plan.AssaySheet;

/** Writes an assay for the terminal. */
final class AssayText {
  private final PrintWriter out;

  AssayText(PrintWriter out) {
    this.out = out;
  }

  /** Writes it. */
  void write(AssaySheet sheet, List<String> assumptions) {
    Paragraph.of(
            sheet
                .assay()
                .withheld()
                .map(why -> "Withheld. " + why)
                .orElse("In the jar (middle, and the range that holds in 8 of 10 likely cases):"),
            "",
            "")
        .forEach(out::println);
    for (AssaySheet.Row row : sheet.rows()) {
      out.printf(
          "  %-15s %8s %-2s (%s to %s)%n",
          row.what(), row.middle(), row.unit(), row.low(), row.high());
    }
    if (!sheet.salt().isEmpty()) {
      out.println();
      out.println(sheet.salt());
    }
    sheet.saltLimits().forEach(this::item);
    section("What the figures say:", sheet.assay().remarks());
    section("Assumed:", assumptions);
    section("Take care:", Cautions.of(sheet.assay()).stream().map(Caution::sentence).toList());
    section("Sources:", sheet.assay().sources().stream().map(Source::citation).toList());
  }

  private void section(String heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      out.println();
      out.println(heading);
      sentences.forEach(this::item);
    }
  }

  private void item(String sentence) {
    Paragraph.of(sentence, "  - ", "    ").forEach(out::println);
  }
}
