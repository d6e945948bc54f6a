package starchfilm.learning;

import java.util.List;
import starchfilm.forecast.PlateParameters;
import starchfilm.learning.summary.DoubtedReading;

/**
 * What is known of a plate that is drying, its weighings so far taken in.
 *
 * @param factors its factors
 * @param doubted those that hardly count
 */
public record WeighedPlate(PlateParameters factors, List<DoubtedReading> doubted) {
  /** Copies the list. */
  public WeighedPlate {
    doubted = List.copyOf(doubted);
  }
}
