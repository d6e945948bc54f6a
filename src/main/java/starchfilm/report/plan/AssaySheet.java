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
 * @param sentence the answer; empty where there is none
 * @param glycerol its share (%), as a figure; empty where there is no answer
 * @param picture the jar's parts side by side; none where there is no answer
 * @param rows the parts, each with its range
 * @param withheld why there are no rows; empty where there are
 * @param salt what the jar's salt does to a film, in a sentence
 * @param saltLimits up to which plasticiser level the salt may be forgotten and may be used
 * @param remarks what the figures say beside that
 * @param cautions what to mind
 * @param sources where the figures come from
 */
public record AssaySheet(
    String sentence,
    String glycerol,
    List<Part> picture,
    List<Row> rows,
    String withheld,
    String salt,
    List<String> saltLimits,
    List<String> remarks,
    List<Caution> cautions,
    List<String> sources) {
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
        assay.content().map(AssaySheet::sentence).orElse(""),
        assay.content().map(content -> figures(content.glycerol().times(100)).get(1)).orElse(""),
        assay.content().map(AssaySheet::picture).orElse(List.of()),
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

  private static String sentence(JarContent content) {
    List<String> share = figures(content.glycerol().times(100));
    List<String> grams = figures(content.pureGlycerolKg().times(1000));
    return "About %s %% is glycerol (%s): %s g of it in the jar (%s)."
        .formatted(share.get(1), range(share), grams.get(1), range(grams));
  }

  private static String range(List<String> figures) {
    return figures.get(0).equals(figures.get(2))
        ? "known that closely"
        : figures.get(0) + "\u2013" + figures.get(2);
  }

  /** The middles of the parts fill the width; the first ends within the range of its glycerol. */
  private static List<Part> picture(JarContent content) {
    double glycerol = content.glycerol().middle();
    double salt = content.stays().middle();
    Part measured = part("glycerol", 0, glycerol);
    return List.of(
        new Part(
            measured.kind(),
            measured.from(),
            measured.width(),
            measured.label(),
            percent(content.glycerol().low()),
            percent(content.glycerol().high() - content.glycerol().low())),
        part("water", glycerol, Math.max(0, 1 - glycerol - salt)),
        part("salt", 1 - salt, salt));
  }

  private static Part part(String kind, double from, double width) {
    return new Part(
        kind, percent(from), percent(width), width >= LABELLED_FROM ? kind : "", "", "");
  }

  private static String percent(double share) {
    return Figures.of(100 * share, 4) + "%";
  }

  private static Row row(String what, Band band, String unit) {
    List<String> figures = figures(band);
    return new Row(what, figures.get(1), unit, figures.get(0), figures.get(2));
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
    return "Up to "
        + Figures.of(100 * plasticiser.orElseThrow(), 2)
        + " g glycerol per 100 g dry starch ";
  }
}
