package starchfilm.report.learnt;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.Plural;

/** What a notebook taught, for a terminal: plain lines that need no colour. */
public final class LearntText {

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
      lines.add(PlainWords.capital(room.sentence()) + ".");
      lines.add(
          "  from "
              + Plural.of(room.plates(), "plate")
              + " and "
              + Plural.of(room.weighings(), "weighing"));
      factors(room.factors(), lines);
      lines.add("");
    }
    for (KindLearnt kind : learnt.kinds()) {
      lines.add(
          "Film of "
              + kind.kind().tradeName()
              + " starch, "
              + Plural.of(kind.plates(), "plate")
              + ":");
      factors(kind.factors(), lines);
      lines.add("");
    }
    if (!learnt.pours().isEmpty()) {
      lines.add("Your pours:");
      factors(learnt.pours(), lines);
      lines.add("");
    }
    if (!learnt.films().isEmpty()) {
      lines.add("Strips you pulled, against the rules for home film:");
      learnt.films().forEach(film -> lines.add("  " + film(film)));
      lines.add("  stiffness: not known; a strip pulled until it breaks does not show" + " it");
      lines.add("");
    }
    lines.add(
        "\u00B1 is one standard deviation; a range holds 8 of 10 likely cases."
            + " What is not known yet keeps the textbook's range.");
    if (!learnt.doubted().isEmpty()) {
      lines.add("");
      lines.add("Readings that look wrong, given little weight:");
      learnt.doubted().forEach(reading -> lines.add("  " + reading.sentence()));
    }
    if (!learnt.leftOut().isEmpty()) {
      lines.add("");
      lines.add("Left out:");
      learnt.leftOut().forEach(left -> lines.add("  " + left.file() + ": " + left.reason()));
    }
    return lines;
  }

  /** The factors that were told, one sentence each. */
  static List<String> told(List<ParameterLearnt> factors) {
    return factors.stream()
        .filter(ParameterLearnt::isTold)
        .map(factor -> PlainWords.word(factor.factor(), "as learnt") + ": " + told(factor))
        .toList();
  }

  private static void factors(List<ParameterLearnt> factors, List<String> lines) {
    for (ParameterLearnt factor : factors) {
      lines.add(
          "  "
              + PlainWords.word(factor.factor(), "as learnt")
              + ": "
              + (factor.isTold() ? told(factor) : "not known yet"));
    }
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
    return film.property().tradeName()
        + " of "
        + film.starch()
        + " film: "
        + times(
            Band.normal(film.logFactor().value(), film.logFactor().sd()),
            Band.normal(0, film.logSdBefore()))
        + "; "
        + Plural.of(film.strips(), "strip");
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
    return String.format(
        Locale.ROOT,
        "%+.1f %s (%+.1f to %+.1f; before %+.1f to %+.1f)",
        now.middle() * factor,
        unit,
        now.low() * factor,
        now.high() * factor,
        before.low() * factor,
        before.high() * factor);
  }
}
