package starchfilm.learning;

import java.util.List;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import starchfilm.files.json.Located;
import starchfilm.files.json.UnreadableFileException;

/**
 * Refuses lessons that no weighing can have taught: with them a forecast would end in a matrix that
 * cannot be inverted, or in a plate of less than no thickness.
 */
final class LessonCheck {
  /** How far below 0, over the largest eigenvalue, twelve figures can leave one that is 0. */
  private static final double ROUNDING = 1e-9;

  /**
   * How far one plate alone can pull the shared deviations, in the textbook's standard deviations;
   * the fit of a plate stops at 8 of its prior.
   */
  private static final double FARTHEST = 12;

  /**
   * The most that weighings can bind a deviation, over the inverse of the textbook's variance. A
   * plate's own part is averaged out of its lesson, and is never less than a sixteenth.
   */
  private static final double MOST_BOUND = 100;

  private static final double ALL_SHARES = 1e-6;

  private LessonCheck() {}

  static void requireInformation(Located place, RealMatrix precision)
      throws UnreadableFileException {
    RealMatrix scaled = precision.copy();
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      for (int j = 0; j < VarianceShares.COUNT; j++) {
        scaled.multiplyEntry(
            i, j, VarianceShares.factor(i).spread() * VarianceShares.factor(j).spread());
      }
    }
    double least = 0;
    double most = 0;
    for (double eigenvalue : new EigenDecomposition(scaled).getRealEigenvalues()) {
      least = Math.min(least, eigenvalue);
      most = Math.max(most, eigenvalue);
    }
    if (least < -ROUNDING * Math.max(1, most)) {
      throw Fields.wrong(place, "figures without a variance below 0");
    }
    if (most > MOST_BOUND) {
      throw Fields.wrong(place, "figures that the weighings of a plate can teach");
    }
  }

  static void requireWithinReach(Located place, PlateLikelihood lesson)
      throws UnreadableFileException {
    Normal alone = SharedParameters.after(List.of(lesson)).of(lesson.plate());
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      double spreads = Math.abs(alone.mean().getEntry(i)) / VarianceShares.factor(i).spread();
      if (!(spreads <= FARTHEST)) {
        throw Fields.wrong(place, "figures that the weighings of a plate can teach");
      }
    }
  }

  static void requireAllOfIt(Located place, Iterable<Double> shares)
      throws UnreadableFileException {
    double sum = 0;
    boolean parts = true;
    for (double share : shares) {
      parts &= share >= 0;
      sum += share;
    }
    if (!parts || Math.abs(sum - 1) > ALL_SHARES) {
      throw Fields.wrong(place, "shares from 0 to 1 that add up to 1");
    }
  }
}
