package starchfilm.cli;

import java.io.PrintWriter;
import java.util.OptionalDouble;
import starchfilm.assay.Assay;
import starchfilm.assay.JarCaution;
import starchfilm.assay.SaltAdvice;
import starchfilm.evidence.Band;
import starchfilm.evidence.Figures;
import starchfilm.evidence.Source;

/** Writes an assay for the terminal. */
final class AssayText {
  private static final int FIGURES = 3;
  private static final double SMALLEST = 0.005;

  /** No film is cast with more glycerol than starch. */
  private static final double MOST_USED = 1;

  private final PrintWriter out;

  AssayText(PrintWriter out) {
    this.out = out;
  }

  /**
   * Writes it.
   *
   * @param assay what is in the jar
   */
  void write(Assay assay) {
    out.println("In the jar (middle, and the range that holds in 8 cases of 10):");
    line("pure glycerol", assay.pureGlycerolKg().times(1000), "g");
    line("glycerol", assay.glycerol().times(100), "%");
    line(mayHoldAlcohol(assay) ? "water, alcohol" : "water", assay.water(), 100);
    line("salt, soap", assay.salt(), 100);
    salt(assay.saltAdvice(), assay.salt().middle());
    if (!assay.remarks().isEmpty()) {
      out.println();
      out.println("What the figures say:");
      assay.remarks().forEach(remark -> item(remark));
    }
    out.println();
    out.println("Mind:");
    for (JarCaution caution : assay.cautions()) {
      item(caution.sentence());
    }
    if (!assay.sources().isEmpty()) {
      out.println();
      out.println("Sources:");
      for (Source source : assay.sources()) {
        item(source.citation());
      }
    }
  }

  private void line(String what, Band fraction, double factor) {
    // A band may touch zero, which a scale factor keeps.
    line(what, fraction.times(factor), "%");
  }

  private void line(String what, Band band, String unit) {
    out.printf(
        "  %-15s %8s %-2s (%s to %s)%n",
        what, figure(band.middle()), unit, figure(band.low()), figure(band.high()));
  }

  /** What is left of a difference after rounding is nothing. */
  private static String figure(double value) {
    return Math.abs(value) < SMALLEST ? "0" : Figures.of(value, FIGURES);
  }

  private void salt(SaltAdvice advice, double salt) {
    out.println();
    if (salt == 0) {
      out.println("Salt: none counted.");
      return;
    }
    out.println(
        "Salt: at 30 g glycerol per 100 g dry starch it makes "
            + Figures.of(100 * advice.ofDrySolidsAtUsual(), 2)
            + " % of the dry film.");
    if (isAboveUse(advice.mostUnnoticed())) {
      item("At any usual plasticiser level it may be forgotten (below 2 % of the film).");
      return;
    }
    item(upTo(advice.mostUnnoticed()) + "it may be forgotten (below 2 % of the film).");
    item(
        isAboveUse(advice.mostUsable())
            ? "At any usual plasticiser level it stays below 5 % of the film, where it does little"
                + " harm."
            : upTo(advice.mostUsable())
                + "it does little harm (below 5 % of the film); above, film is weaker and may"
                + " bloom.");
  }

  private static boolean mayHoldAlcohol(Assay assay) {
    return assay.alcoholLeft().isPresent() || assay.cautions().contains(JarCaution.ALCOHOL_UNKNOWN);
  }

  private static boolean isAboveUse(OptionalDouble plasticiser) {
    return plasticiser.isEmpty() || plasticiser.getAsDouble() > MOST_USED;
  }

  private static String upTo(OptionalDouble plasticiser) {
    return "Up to "
        + Figures.of(100 * plasticiser.orElseThrow(), 2)
        + " g glycerol per 100 g dry starch ";
  }

  private void item(String sentence) {
    Paragraph.of(sentence, "  - ", "    ").forEach(out::println);
  }
}
