package starchfilm.report.plan;

import static starchfilm.numerics.units.ReaderUnit.GRAM;
import static starchfilm.numerics.units.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.jar.assay.SaltAdvice;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.units.Figures;
import starchfilm.numerics.units.ReaderUnit;

/**
 * What is in a jar, in the reader's units.
 *
 * @param assay what is in it
 */
public record AssaySheet(Assay assay) {
  /** A figure is stated in steps of which its range holds at least this many. */
  private static final double STEPS_A_RANGE = 5;

  /** Narrower parts hold no word. */
  private static final double LABELLED_FROM = 0.12;

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
  public List<Row> rows() {
    return assay.content().map(this::rows).orElse(List.of());
  }

  private List<Row> rows(JarContent content) {
    return List.of(
        row("pure glycerol", GRAM, content.pureGlycerolKg()),
        row("glycerol", PERCENT, content.glycerol()),
        row(
            assay.origin().mayHoldMethanol() ? "water, alcohol" : "water",
            PERCENT,
            content.volatiles()),
        row("salt, soap", PERCENT, content.stays()));
  }

  /** Its share of glycerol (%), as a figure; empty where it is withheld. */
  public String glycerol() {
    return assay
        .content()
        .map(content -> figures(PERCENT.of(content.glycerol())).get(1))
        .orElse("");
  }

  /** The answer; empty where it is withheld. */
  public String sentence() {
    return assay.content().map(AssaySheet::sentence).orElse("");
  }

  private static String sentence(JarContent content) {
    List<String> share = figures(PERCENT.of(content.glycerol()));
    List<String> grams = figures(GRAM.of(content.pureGlycerolKg()));
    return "About %s %% is glycerol (%s): %s g of it in the jar (%s)."
        .formatted(share.get(1), range(share), grams.get(1), range(grams));
  }

  private static String range(List<String> figures) {
    return figures.get(0).equals(figures.get(2))
        ? "known that closely"
        : figures.get(0) + "\u2013" + figures.get(2);
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

  private static Row row(String what, ReaderUnit unit, Band si) {
    List<String> figures = figures(unit.of(si));
    return new Row(what, figures.get(1), unit.symbol(), figures.get(0), figures.get(2));
  }

  /** Low end, middle and high end, with as many digits as the range deserves. */
  private static List<String> figures(Band band) {
    double step =
        Math.pow(
            10, Math.floor(Math.log10(Math.max(1e-3, (band.high() - band.low()) / STEPS_A_RANGE))));
    return List.of(
        rounded(band.low(), step), rounded(band.middle(), step), rounded(band.high(), step));
  }

  private static String rounded(double value, double step) {
    return Figures.of(Math.round(value / step) * step, 6);
  }

  private boolean hasSalt() {
    return assay.content().filter(content -> content.stays().high() > 0).isPresent();
  }

  /** What the jar's salt does to a film, in a sentence; empty where it is not known. */
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
