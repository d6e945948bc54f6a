package starchfilm.report.learnt;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.Plural;

/** What a notebook taught, for a terminal: plain lines that need no colour. */
public final class LearntText {

  static final String STRIPS = "Strips you pulled, compared with the textbook for home film";

  private LearntText() {}

  /**
   * Everything that was learnt.
   *
   * @param learnt what was learnt
   * @return lines; long sentences are not broken, lines of a list begin with blanks
   */
  public static List<String> of(Learnt learnt) {
    List<String> lines = new ArrayList<>();
    for (RoomLearnt room : learnt.rooms()) {
      List<String> shown = new ArrayList<>(List.of(from(room)));
      shown.addAll(factors(room.factors()));
      block(PlainWords.capital(room.sentence()) + ".", shown, lines);
    }
    for (KindLearnt kind : learnt.kinds()) {
      String plates = Plural.of(kind.plates(), "plate");
      block(film(kind) + ", " + plates + ":", factors(kind.factors()), lines);
    }
    block("Your pours:", factors(learnt.pours()), lines);
    List<String> films = new ArrayList<>(learnt.films().stream().map(LearntText::film).toList());
    if (!films.isEmpty()) {
      films.add("stiffness: not known; a strip pulled until it breaks does not show it");
    }
    block(STRIPS + ":", films, lines);
    lines.add(
        "± is one standard deviation; a range holds 8 of 10 likely cases."
            + " What is not known yet keeps the textbook's range.");
    List<String> foot = new ArrayList<>();
    block(
        "Readings that look wrong, given little weight:",
        learnt.doubted().stream().map(DoubtedReading::sentence).toList(),
        foot);
    block("Left out:", leftOut(learnt), foot);
    if (!foot.isEmpty()) {
      lines.add("");
      lines.addAll(foot.subList(0, foot.size() - 1));
    }
    return lines;
  }

  private static void block(String head, List<String> shown, List<String> lines) {
    if (!shown.isEmpty()) {
      lines.add(head);
      shown.forEach(line -> lines.add("  " + line));
      lines.add("");
    }
  }

  static String from(RoomLearnt room) {
    return "from %s and %s"
        .formatted(Plural.of(room.plates(), "plate"), Plural.of(room.weighings(), "weighing"));
  }

  static String film(KindLearnt kind) {
    return "Film of " + kind.kind().tradeName() + " starch";
  }

  static List<String> leftOut(Learnt learnt) {
    return learnt.leftOut().stream().map(left -> left.file() + ": " + left.reason()).toList();
  }

  /** The factors that were stated, one sentence each. */
  static List<String> told(List<ParameterLearnt> factors) {
    return factors.stream()
        .filter(ParameterLearnt::isTold)
        .map(factor -> PlainWords.word(factor.factor(), "as learnt") + ": " + told(factor))
        .toList();
  }

  private static List<String> factors(List<ParameterLearnt> factors) {
    return factors.stream()
        .map(
            factor ->
                PlainWords.word(factor.factor(), "as learnt")
                    + ": "
                    + (factor.isTold() ? told(factor) : "not known yet"))
        .toList();
  }

  private static String told(ParameterLearnt factor) {
    return figures(factor)
        + (factor.isHardlyBelieved()
            ? "; far outside the textbook's range: check times, tares and poured" + " masses"
            : "");
  }

  private static String figures(ParameterLearnt factor) {
    Band now = Band.normal(factor.deviation(), factor.sd());
    Band before = Band.normal(0, factor.sdBefore());
    return switch (factor.factor()) {
      case AIR_SIDE, DIFFUSIVITY, ISOTHERM, BENCH, UNEVENNESS -> times(now, before);
      case HUMIDITY -> difference(now, before, PERCENT_PER_UNIT, "points");
      case AIR_TEMPERATURE -> difference(now, before, 1, "\u00B0C");
      case THICKNESS, SOLIDS, PLASTICISER -> difference(now, before, PERCENT_PER_UNIT, "%");
    };
  }

  static String film(FilmLearnt film) {
    return "%s of %s film: %s; %s"
        .formatted(
            film.property().tradeName(),
            film.starch(),
            times(
                Band.normal(film.logFactor().value(), film.logFactor().sd()),
                Band.normal(0, film.logSdBefore())),
            Plural.of(film.strips(), "strip"));
  }

  private static String times(Band logNow, Band logBefore) {
    return String.format(
        Locale.ROOT,
        "%.2f × textbook (%.2f to %.2f; before %.2f to %.2f)",
        Math.exp(logNow.middle()),
        Math.exp(logNow.low()),
        Math.exp(logNow.high()),
        Math.exp(logBefore.low()),
        Math.exp(logBefore.high()));
  }

  private static String difference(Band now, Band before, double factor, String unit) {
    return "%s %s (%s to %s; before %s to %s)"
        .formatted(
            Figures.change(now.middle() * factor),
            unit,
            Figures.change(now.low() * factor),
            Figures.change(now.high() * factor),
            Figures.change(before.low() * factor),
            Figures.change(before.high() * factor));
  }
}
