package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.drying.SpotForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Spans;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PourCalendar;

/**
 * The times of each milestone of each spot.
 *
 * @param rows one a milestone; skin-dry only where it comes well before peelable
 * @param scaleTest from when a kitchen scale tells that the plate is dry, if ever
 */
record MilestoneTable(List<SpotHead> spots, List<MilestoneLine> rows, Optional<String> scaleTest) {
  /** Milestones closer than this in every spot are one to a cook (ratio; judged). */
  private static final double SAME = 0.05;

  /** The head of a column. */
  record SpotHead(String name, String thickness) {}

  /**
   * A milestone.
   *
   * @param cells when, one a spot
   */
  record MilestoneLine(String name, String meaning, List<When> cells) {}

  /**
   * The time of a milestone.
   *
   * @param moment by the calendar; empty where the pour is not dated
   * @param span time since the pour, with its range
   * @param chance a remark where it does not come in every likely case; may be empty
   */
  record When(String moment, String span, String chance) {}

  /**
   * The table of one trial.
   *
   * @return milestones in the order they come, spots from thin to thick
   */
  public static MilestoneTable of(TrialForecast trial) {
    return new MilestoneTable(
        Arrays.stream(Spot.values()).map(spot -> head(spot, trial.drying().at(spot))).toList(),
        Arrays.stream(Milestone.values())
            .filter(milestone -> milestone != Milestone.SKIN_DRY || !skinIsNoMilestone(trial))
            .map(milestone -> row(milestone, trial))
            .toList(),
        ConstantMass.of(trial));
  }

  private static SpotHead head(Spot spot, SpotForecast at) {
    return new SpotHead(
        PlainWords.word(spot),
        "%s wet, %s dry"
            .formatted(
                MILLIMETRE.figure(at.wetThicknessM()), MICROMETRE.figure(at.dryThicknessM())));
  }

  private static MilestoneLine row(Milestone milestone, TrialForecast trial) {
    PourCalendar calendar = PourCalendar.of(trial.trial());
    double longestS = trial.drying().at(Spot.THICK_SPOT).at(milestone).timeS().middle();
    return new MilestoneLine(
        PlainWords.word(milestone),
        PlainWords.meaning(milestone),
        Arrays.stream(Spot.values())
            .map(spot -> when(trial.drying().at(spot).at(milestone), longestS, calendar))
            .toList());
  }

  /** Thin film is firm all through within minutes of its skin, and then only one of them counts. */
  private static boolean skinIsNoMilestone(TrialForecast trial) {
    return Arrays.stream(Spot.values())
        .map(trial.drying()::at)
        .allMatch(
            spot ->
                spot.at(Milestone.PEELABLE).timeS().middle()
                    <= (1 + SAME) * spot.at(Milestone.SKIN_DRY).timeS().middle());
  }

  private static When when(MilestoneForecast forecast, double longestS, PourCalendar calendar) {
    double share = forecast.shareReached();
    return new When(
        calendar.pouredAt().isEmpty() ? "" : calendar.moment(forecast.timeS().middle()),
        Spans.of(forecast.timeS(), longestS),
        share > 0 && share < 0.995 && Double.isFinite(forecast.timeS().low())
            ? "in " + PlanWords.chance(share) + " likely cases"
            : "");
  }
}
