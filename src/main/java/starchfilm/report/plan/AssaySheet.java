package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.jar.assay.SaltAdvice;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.numerics.units.Named;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.AnswerTable.AnswerRow;
import starchfilm.report.data.Sheet;

/**
 * The content of a jar, in the reader's units.
 *
 * @param assay what is in it
 * @param assumptions what was taken for granted, a sentence each
 */
public record AssaySheet(Assay assay, List<String> assumptions) implements Sheet.OfRows {
  /** A figure is stated in steps of which its range holds at least this many. */
  private static final double STEPS_A_RANGE = 5;

  /** Narrower parts hold no word. */
  private static final double LABELLED_FROM = 0.2;

  /** No film is cast with more glycerol than starch. */
  private static final double MOST_USED = 1;

  /**
   * A part of the jar.
   *
   * @param key its key in data files
   * @param what the part
   * @param unit its unit
   * @param si how much, in SI
   */
  public record JarFigure(String key, String what, ReaderUnit unit, Band si) {
    /** The value that one in ten cases stay below. */
    public String low() {
      return rounded(si.low());
    }

    /** The middle of the likely cases. */
    public String middle() {
      return rounded(si.middle());
    }

    /** The value that one in ten cases lie above. */
    public String high() {
      return rounded(si.high());
    }

    private String range() {
      return low().equals(high()) ? "known that closely" : low() + "\u2013" + high();
    }

    /** With as many digits as the range deserves, middle and ends alike. */
    private String rounded(double figure) {
      double steps = (unit.of(si.high()) - unit.of(si.low())) / STEPS_A_RANGE;
      if (steps == 0) {
        return Figures.of(unit.of(figure), 6);
      }
      int decimals = (int) -Math.floor(Math.log10(Math.max(1e-3, steps)));
      return BigDecimal.valueOf(unit.of(figure))
          .setScale(decimals, RoundingMode.HALF_UP)
          .setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY)
          .toPlainString();
    }
  }

  /**
   * A part in the picture of the jar, as per cent of its width.
   *
   * @param kind what it is: glycerol, water or salt
   * @param from where it begins
   * @param width how wide it is
   * @param label its word; empty where it is too narrow
   * @param low where its end may lie at least
   * @param high where its end may lie at most
   */
  public record Part(
      String kind, String from, String width, String label, String low, String high) {}

  /** The parts, each with its range; none where they are withheld. */
  public List<JarFigure> rows() {
    return assay.content().map(this::rows).orElse(List.of());
  }

  private List<JarFigure> rows(JarContent content) {
    String volatiles = assay.origin().mayHoldMethanol() ? "water, alcohol" : "water";
    return List.of(
        new JarFigure("pure_glycerol_g", "pure glycerol", GRAM, content.pureGlycerolKg()),
        new JarFigure("glycerol_pct", "glycerol", PERCENT, content.glycerol()),
        new JarFigure("water_and_alcohol_pct", volatiles, PERCENT, content.volatiles()),
        new JarFigure("salt_and_soap_pct", "salt, soap", PERCENT, content.stays()));
  }

  /** The cautions it calls for. */
  public List<Caution> cautions() {
    return Cautions.of(assay);
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        assay
            .withheld()
            .map(why -> "Withheld. " + why)
            .orElse("In the jar (middle, and the range that holds in 8 of 10 likely cases):"));
    for (JarFigure row : rows()) {
      lines.add(
          "  %-15s %8s %-2s (%s to %s)"
              .formatted(row.what(), row.middle(), row.unit().symbol(), row.low(), row.high()));
    }
    if (!salt().isEmpty()) {
      lines.addAll(List.of("", salt()));
    }
    saltLimits().forEach(limit -> lines.add("  - " + limit));
    section(lines, "What the figures say:", assay.remarks());
    section(lines, "Assumed:", assumptions);
    section(lines, "Take care:", cautions().stream().map(Caution::sentence).toList());
    section(lines, "Sources:", assay.sources().stream().map(Source::citation).toList());
    return lines;
  }

  private static void section(List<String> lines, String heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      lines.addAll(List.of("", heading));
      sentences.forEach(sentence -> lines.add("  - " + sentence));
    }
  }

  /** One row. */
  @Override
  public AnswerTable table() {
    AnswerTable table = new AnswerTable("assay");
    AnswerRow row =
        table
            .row("jar", "")
            .put("origin", Named.of(assay.origin()))
            .put("mass_g", assay.massKg().value())
            .put("withheld", assay.withheld().orElse(""));
    rows().forEach(part -> row.put(part.key(), part.si()));
    assay.alcoholLeft().ifPresent(left -> row.put("alcohol_at_most_g", left.mostKg()));
    return table.assuming(assumptions).tell("remarks", assay.remarks()).cautioning(cautions());
  }

  /** Its share of glycerol (%), as a figure; empty where it is withheld. */
  public String glycerol() {
    return rows().isEmpty() ? "" : rows().get(1).middle();
  }

  /** The answer; empty where it is withheld. */
  public String sentence() {
    if (rows().isEmpty()) {
      return "";
    }
    JarFigure grams = rows().get(0);
    JarFigure share = rows().get(1);
    return "About %s %% is glycerol (%s): %s g of it in the jar (%s)."
        .formatted(share.middle(), share.range(), grams.middle(), grams.range());
  }

  /** The jar's parts side by side; none where they are withheld. */
  public List<Part> picture() {
    return assay.content().map(AssaySheet::picture).orElse(List.of());
  }

  /** The middles of the parts fill the width; the first ends within the range of its glycerol. */
  private static List<Part> picture(JarContent content) {
    double glycerol = content.glycerol().middle();
    double salt = content.stays().middle();
    String low = percent(content.glycerol().low());
    String high = percent(content.glycerol().high() - content.glycerol().low());
    return List.of(
        part("glycerol", 0, glycerol, low, high),
        part("water", glycerol, Math.max(0, 1 - glycerol - salt), "", ""),
        part("salt", 1 - salt, salt, "", ""));
  }

  private static Part part(String kind, double from, double width, String low, String high) {
    String label = width >= LABELLED_FROM ? kind : "";
    return new Part(kind, percent(from), percent(width), label, low, high);
  }

  private static String percent(double share) {
    return Figures.of(100 * share, 4) + "%";
  }

  private boolean hasSalt() {
    return assay.content().filter(content -> content.stays().high() > 0).isPresent();
  }

  /** The effect of the jar's salt on a film, in a sentence; empty where it is not known. */
  public String salt() {
    return assay
        .saltAdvice()
        .map(
            advice ->
                hasSalt()
                    ? "Salt: at 30 g glycerol per 100 g dry starch it makes %s %% of the dry film."
                        .formatted(Figures.of(PERCENT.of(advice.ofDrySolidsAtUsual()), 2))
                    : "Salt: none counted.")
        .orElse("");
  }

  /** Up to which plasticiser level the salt may be forgotten and may be used. */
  public List<String> saltLimits() {
    return assay.saltAdvice().filter(advice -> hasSalt()).map(AssaySheet::limits).orElse(List.of());
  }

  private static List<String> limits(SaltAdvice advice) {
    if (isAboveUse(advice.mostUnnoticed())) {
      return List.of("At any usual plasticiser level you can ignore it (below 2 % of the film).");
    }
    List<String> limits = new ArrayList<>();
    limits.add(upTo(advice.mostUnnoticed()) + "you can ignore it (below 2 % of the film).");
    limits.add(
        isAboveUse(advice.mostUsable())
            ? "At any usual plasticiser level it stays below 5 % of the film, which"
                + " makes film a little weaker."
            : upTo(advice.mostUsable())
                + "film is a little weaker (below 5 % of the film); above that, it is"
                + " weaker and crystals may bloom on it.");
    return limits;
  }

  private static boolean isAboveUse(OptionalDouble plasticiser) {
    return plasticiser.isEmpty() || plasticiser.getAsDouble() > MOST_USED;
  }

  private static String upTo(OptionalDouble plasticiser) {
    return "Up to %s g glycerol per 100 g dry starch "
        .formatted(Figures.of(PERCENT.of(plasticiser.orElseThrow()), 2));
  }
}
