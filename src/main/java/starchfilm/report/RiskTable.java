package starchfilm.report;

import java.util.Arrays;
import java.util.List;
import starchfilm.film.risk.CrackCause;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.MouldRisk;
import starchfilm.film.risk.Remedy;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.ReaderUnit;

/** How a plate may fail while it dries, and the change that would help most. */
final class RiskTable {
  private RiskTable() {}

  /**
   * A risk.
   *
   * @param name what may happen
   * @param level how likely, one word
   * @param steps how likely, as four steps of which so many are taken
   * @param reason what it rests on
   * @param remedy the change that helps most, as the model sees it; may be empty
   */
  record Row(String name, String level, List<Boolean> steps, String reason, String remedy) {}

  /**
   * The risks of a trial.
   *
   * @param trial the trial
   * @return cracks, then mould
   */
  static List<Row> of(TrialForecast trial) {
    return List.of(
        crack(trial.risks().crack()),
        mould(trial.risks().mould(), new PourCalendar(trial.trial().pouredAt())));
  }

  private static Row crack(CrackRisk risk) {
    String reason =
        "While it shrinks the skin must stretch by "
            + ReaderUnit.PERCENT.two(risk.stretchNeeded())
            + " % and can by "
            + ReaderUnit.PERCENT.two(risk.stretchAvailable())
            + " %"
            + risk.cause().map(cause -> ": " + words(cause)).orElse("")
            + ".";
    return new Row(
        "Cracks",
        word(risk.level()),
        steps(risk.level()),
        reason,
        risk.remedy()
            .map(
                remedy ->
                    sentence(remedy)
                        + ": needed over available stretch "
                        + Figures.two(remedy.riskBefore())
                        + " → "
                        + Figures.two(remedy.riskAfter())
                        + ".")
            .orElse(""));
  }

  private static Row mould(MouldRisk risk, PourCalendar calendar) {
    String reason =
        "In the wettest part mould could grow for what amounts to "
            + Figures.two(risk.weightedHours())
            + " hours at full speed"
            + (Double.isInfinite(risk.growthFromS())
                ? "."
                : "; it may show from " + calendar.moment(risk.growthFromS()) + " on.");
    return new Row(
        "Mould",
        word(risk.level()),
        steps(risk.level()),
        reason,
        risk.remedy()
            .map(
                remedy ->
                    sentence(remedy)
                        + ": "
                        + Figures.two(remedy.riskBefore())
                        + " → "
                        + Figures.two(remedy.riskAfter())
                        + " hours.")
            .orElse(""));
  }

  private static String word(RiskLevel level) {
    return switch (level) {
      case LOW -> "not expected";
      case WATCH -> "possible";
      case LIKELY -> "likely";
      case EXPECTED -> "expected";
    };
  }

  private static List<Boolean> steps(RiskLevel level) {
    return Arrays.stream(RiskLevel.values()).map(step -> step.compareTo(level) <= 0).toList();
  }

  private static String words(CrackCause cause) {
    return switch (cause) {
      case TOO_BRITTLE -> "the film is too brittle for its own shrinking";
      case TOO_THICK -> "the layer is so thick that the skin is dry long before the core";
      case TOO_FAST -> "the air dries the skin too fast";
      case UNEVEN -> "the thin edge is dry while the thick spot still shrinks";
    };
  }

  private static String sentence(Remedy remedy) {
    return "Best change: "
        + switch (remedy.change()) {
          case POUR_THINNER -> "pour thinner, " + change(remedy, ReaderUnit.MILLIMETRE, " mm");
          case MORE_GLYCEROL ->
              "more glycerol, " + change(remedy, ReaderUnit.PERCENT, " g per 100 g dry starch");
          case LEVEL_BETTER ->
              "level the plate better, ± " + change(remedy, ReaderUnit.PERCENT, " %");
          case DRY_SLOWER -> "dry slower, " + change(remedy, ReaderUnit.PERCENT, " % RH");
          case MORE_AIR -> "a fan, " + change(remedy, ReaderUnit.METRE_PER_SECOND, " m/s");
          case DRIER_ROOM -> "a drier room, " + change(remedy, ReaderUnit.PERCENT, " % RH");
          case WARMER_ROOM -> "a warmer room, " + change(remedy, ReaderUnit.CELSIUS, " °C");
        };
  }

  private static String change(Remedy remedy, ReaderUnit unit, String symbol) {
    return unit.two(remedy.from()) + " → " + unit.two(remedy.to()) + symbol;
  }
}
