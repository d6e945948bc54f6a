package starchfilm.report.today;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import starchfilm.drying.DryingVerdict;
import starchfilm.report.DryingFigure;
import starchfilm.report.Headline;
import starchfilm.report.TrialSheet;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.SectionFigure;
import starchfilm.report.words.Spans;
import starchfilm.today.Standing;

/**
 * A plate that is drying, as it stands now.
 *
 * @param words what is said of it
 * @param since how long it has been drying
 * @param need what it needs, as a class of the style sheet
 * @param figure its curve with its weighings, and now
 * @param section the plate cut open now
 * @param lastWeighed what the last weighing said; may be empty
 * @param questions what is odd about its weighings, each with the question to answer
 * @param advice what the room makes of it, where it does not simply dry; may be empty
 */
public record PlateCard(
    PlateWords words,
    String since,
    String need,
    CurveFigure figure,
    SectionFigure section,
    String lastWeighed,
    List<String> questions,
    String advice) {
  /**
   * A plate now.
   *
   * @param standing how it stands
   * @return its card
   */
  public static PlateCard of(Standing standing) {
    return new PlateCard(
        new PlateWords(standing),
        "drying for " + Spans.of(standing.nowS()),
        standing.need().name().toLowerCase(Locale.ROOT),
        DryingFigure.of(standing.forecast(), OptionalDouble.of(standing.nowS())),
        new CutPlate(standing.forecast()).at(standing.nowS()),
        TrialSheet.lastWeighed(standing.forecast()),
        standing.forecast().weighed().questions(),
        standing.forecast().drying().verdict() == DryingVerdict.DRIES
            ? ""
            : Headline.of(standing.forecast()));
  }

  /**
   * The plate cut open from the pour until it is dry.
   *
   * @param standing how it stands
   * @return a few moments in order
   */
  public static List<SectionFigure> alongTime(Standing standing) {
    return new CutPlate(standing.forecast()).alongTime(standing);
  }
}
