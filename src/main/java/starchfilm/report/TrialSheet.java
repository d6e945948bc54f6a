package starchfilm.report;

import java.util.Map;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.forecast.TrialForecast;

/** One trial as a part of another page, as it stands on the comparison page. */
public final class TrialSheet {
  private TrialSheet() {}

  /**
   * What the template {@code trial :: whole} shows.
   *
   * @param forecast the trial
   * @return the template's value, by its name
   */
  public static Map<String, Object> whole(TrialAnalysis forecast) {
    return Map.of("trial", TrialView.of(forecast));
  }

  /**
   * Whether the amounts are too little for the plates.
   *
   * @param trial the trial
   * @return a sentence; empty where they are enough
   */
  public static String shortfall(Trial trial) {
    return WeighOut.shortfall(trial);
  }

  /**
   * How a trial's paste is poured.
   *
   * @param forecast the trial
   * @param plates plates poured, from one potful or several
   * @return a sentence
   */
  public static String pour(TrialForecast forecast, int plates) {
    return PourFigure.sentence(forecast, plates);
  }
}
