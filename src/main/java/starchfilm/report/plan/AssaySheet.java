package starchfilm.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.jar.assay.SaltAdvice;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Figures;
import starchfilm.numerics.evidence.Source;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;

/**
 * What is in a jar, in the reader's units.
 *
 * @param rows the parts, each with its range
 * @param withheld why there are no rows; empty where there are
 * @param salt what the jar's salt does to a film, in a sentence
 * @param saltLimits up to which plasticiser level the salt may be forgotten and may be used
 * @param remarks what the figures say beside that
 * @param cautions what to mind
 * @param sources where the figures come from
 */
public record AssaySheet(
    List<Row> rows,
    String withheld,
    String salt,
    List<String> saltLimits,
    List<String> remarks,
    List<Caution> cautions,
    List<String> sources) {
  private static final int FIGURES = 3;

  /** No film is cast with more glycerol than starch. */
  private static final double MOST_USED = 1;

  /**
   * A part of the jar.
   *
   * @param what the part
   * @param middle the middle of the likely cases
   * @param unit its unit
   * @param low the value that one in ten cases stay below
   * @param high the value that one in ten cases lie above
   */
  public record Row(String what, String middle, String unit, String low, String high) {}

  /** Copies the lists. */
  public AssaySheet {
    rows = List.copyOf(rows);
    saltLimits = List.copyOf(saltLimits);
    remarks = List.copyOf(remarks);
    cautions = List.copyOf(cautions);
    sources = List.copyOf(sources);
  }

  /**
   * The sheet of a jar.
   *
   * @param assay what is in it
   * @return the sheet
   */
  public static AssaySheet of(Assay assay) {
    Optional<SaltAdvice> advice = assay.saltAdvice();
    double salt = assay.content().map(content -> content.stays().high()).orElse(0.0);
    return new AssaySheet(
        assay.content().map(content -> rows(assay, content)).orElse(List.of()),
        assay.withheld().orElse(""),
        advice.map(found -> salt(found, salt)).orElse(""),
        advice.map(found -> saltLimits(found, salt)).orElse(List.of()),
        assay.remarks(),
        Cautions.of(assay),
        assay.sources().stream().map(Source::citation).toList());
  }

  private static List<Row> rows(Assay assay, JarContent content) {
    return List.of(
        row("pure glycerol", content.pureGlycerolKg().times(1000), "g"),
        row("glycerol", content.glycerol().times(100), "%"),
        row(
            assay.origin().mayHoldMethanol() ? "water, alcohol" : "water",
            content.volatiles().times(100),
            "%"),
        row("salt, soap", content.stays().times(100), "%"));
  }

  private static Row row(String what, Band band, String unit) {
    return new Row(
        what,
        Figures.of(band.middle(), FIGURES),
        unit,
        Figures.of(band.low(), FIGURES),
        Figures.of(band.high(), FIGURES));
  }

  private static String salt(SaltAdvice advice, double salt) {
    return salt == 0
        ? "Salt: none counted."
        : "Salt: at 30 g glycerol per 100 g dry starch it makes "
            + Figures.of(100 * advice.ofDrySolidsAtUsual(), 2)
            + " % of the dry film.";
  }

  private static List<String> saltLimits(SaltAdvice advice, double salt) {
    if (salt == 0) {
      return List.of();
    }
    if (isAboveUse(advice.mostUnnoticed())) {
      return List.of("At any usual plasticiser level you can ignore it (below 2 % of the film).");
    }
    List<String> limits = new ArrayList<>();
    limits.add(upTo(advice.mostUnnoticed()) + "you can ignore it (below 2 % of the film).");
    limits.add(
        isAboveUse(advice.mostUsable())
            ? "At any usual plasticiser level it stays below 5 % of the film: film is a little"
                + " weaker."
            : upTo(advice.mostUsable())
                + "it does little harm (below 5 % of the film); above, film is weaker and may"
                + " bloom.");
    return limits;
  }

  private static boolean isAboveUse(OptionalDouble plasticiser) {
    return plasticiser.isEmpty() || plasticiser.getAsDouble() > MOST_USED;
  }

  private static String upTo(OptionalDouble plasticiser) {
    return "Up to "
        + Figures.of(100 * plasticiser.orElseThrow(), 2)
        + " g glycerol per 100 g dry starch ";
  }
}
