package starchfilm.report;

import java.util.List;
import starchfilm.trial.TrialForecast;

/**
 * What a comparison page is made from.
 *
 * @param trials the trials in the order they are shown, each with its forecast
 * @param troubles whole sentences on files that could not be read and trials that could not be
 *     forecast
 * @param remarks whole sentences on what was read with a grain of salt, such as gaps in a room log
 */
public record Comparison(List<TrialForecast> trials, List<String> troubles, List<String> remarks) {
  /** Copies the lists. */
  public Comparison {
    trials = List.copyOf(trials);
    troubles = List.copyOf(troubles);
    remarks = List.copyOf(remarks);
  }
}
