package starchfilm.advice;

import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Named;

/**
 * The drying, film and risks that the model expects of a set-up.
 *
 * @param dryThroughS when the thick spot is dry through (s since the pour), 10, 50 and 90 %
 * @param film what the film will be like
 * @param risks how it may crack or mould
 */
public record Expectation(Band dryThroughS, FilmForecast film, PlateRisks risks) {
  /** A change of the middle by less than this is not stated (ratio; judged). */
  private static final double VISIBLE = 0.05;

  /** With the range of likely cases. */
  static Expectation ofRange(ForecastCache outlook) {
    return new Expectation(outlook.dryThroughS(), outlook.film(), outlook.risks());
  }

  /** The middle case alone. */
  static Expectation of(ForecastCache outlook) {
    double dryS = outlook.timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    return new Expectation(Band.exact(dryS), outlook.film(), outlook.risks());
  }

  /** What is different in another expectation, in the order people ask; may be empty. */
  List<ExpectedEffect> changesTo(Expectation after) {
    return changes(after, true);
  }

  /** The same, only the middles stated. */
  List<ExpectedEffect> middlesTo(Expectation after) {
    return changes(after, false);
  }

  private List<ExpectedEffect> changes(Expectation after, boolean ranges) {
    List<ExpectedEffect> effects = new ArrayList<>();
    if (moved(dryThroughS, after.dryThroughS)) {
      effects.add(
          new ExpectedEffect(
              "dry through", span(dryThroughS, ranges), span(after.dryThroughS, ranges)));
    }
    add(effects, "cracking", word(risks.crack().level()), word(after.risks.crack().level()));
    add(effects, "mould", word(risks.mould().level()), word(after.risks.mould().level()));
    add(effects, "feel", Named.of(film.feel()), Named.of(after.film.feel()));
    for (FilmEffect told : FILM_EFFECTS) {
      Band was = told.property.of(film);
      Band is = told.property.of(after.film);
      boolean stated =
          film.withheld(told.property).isEmpty() && after.film.withheld(told.property).isEmpty();
      if (stated && moved(was, is)) {
        effects.add(new ExpectedEffect(told.words, told.in(was, ranges), told.in(is, ranges)));
      }
    }
    return List.copyOf(effects);
  }

  /** A figure of the film that a change may move, in the reader's unit. */
  private record FilmEffect(FilmProperty property, String words, ReaderUnit unit) {
    String in(Band si, boolean range) {
      return range ? unit.band(si) : unit.figure(si.middle());
    }
  }

  private static final List<FilmEffect> FILM_EFFECTS =
      List.of(
          new FilmEffect(FilmProperty.ELONGATION, "stretch at break", PERCENT),
          new FilmEffect(FilmProperty.TENSILE_STRENGTH, "tensile strength", MEGAPASCAL),
          new FilmEffect(FilmProperty.DRY_THICKNESS, "dry thickness", MICROMETRE));

  private static String span(Band seconds, boolean range) {
    return range ? Spans.of(seconds) : Spans.of(seconds.middle());
  }

  private static void add(List<ExpectedEffect> effects, String what, String before, String after) {
    if (!before.equals(after)) {
      effects.add(new ExpectedEffect(what, before, after));
    }
  }

  private static boolean moved(Band before, Band after) {
    if (Double.isInfinite(before.middle()) || Double.isInfinite(after.middle())) {
      return before.middle() != after.middle();
    }
    return Math.abs(Math.log(after.middle() / before.middle())) > VISIBLE;
  }

  private static String word(RiskLevel level) {
    return switch (level) {
      case LOW -> "not expected";
      case WATCH -> "possible";
      case LIKELY -> "likely";
      case EXPECTED -> "expected";
    };
  }
}
