package starchfilm.planning;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;

/**
 * When the thick spot of one blend's paste is ready, over the whole of the recipe space.
 *
 * <p>Real drying forecasts, each in the same few likely cases, stand at Chebyshev's nodes of starch
 * concentration, plasticiser level and the logarithm of the wet thickness; a polynomial is fitted
 * to the mean and the spread of the logarithm of the time. The search walks on this surface; what
 * it finds is forecast again in full.
 *
 * <p>The times of a forecast are close to log-normal, which gives the chance of being ready by a
 * date; cases that are never ready lower it by their share.
 *
 * @param logMean mean of the logarithm of the time (s)
 * @param logSd its standard deviation
 * @param share share of the likely cases that are ever ready
 */
record DryingSurface(
    SurfaceRange starch,
    SurfaceRange plasticiser,
    SurfaceRange logThickness,
    SmoothSurface logMean,
    SmoothSurface logSd,
    SmoothSurface share) {
  private static final int STARCH_NODES = 3;
  private static final int PLASTICISER_NODES = 3;
  private static final int THICKNESS_NODES = 5;
  private static final int NODES = STARCH_NODES * PLASTICISER_NODES * THICKNESS_NODES;

  /** Stands for a paste none of whose likely cases is ever ready (s). */
  private static final double NEVER_S = 1e9;

  private static final double THICKNESS_ACCURACY = 1e-6;
  private static final int ROOT_EVALUATIONS = 100;
  private static final double NARROWEST_LOG_SD = 1e-3;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** The ends of one variable. */
  record SurfaceRange(double from, double to) {
    /** The variable at one of Chebyshev's nodes, which are scaled to -1 to 1. */
    double at(double scaled) {
      return from + (to - from) * (scaled + 1) / 2;
    }

    /** Rounding may leave a figure a hair outside its range; further out it is a fault of ours. */
    double scaled(double value) {
      double scaled = 2 * (value - from) / (to - from) - 1;
      if (!(Math.abs(scaled) < 1 + 1e-6)) {
        throw new IllegalStateException(value + " is outside the surface, " + from + " to " + to);
      }
      return scaled;
    }
  }

  /**
   * Forecasts the nodes.
   *
   * @param request room, plate and jar
   * @param mostPlasticiser upper end of the plasticiser level (kg per kg dry starch)
   * @param thinnestM lower end of the wet thickness (m)
   * @param thickestM upper end of it (m)
   */
  static DryingSurface of(
      PlanRequest request,
      StarchBlend blend,
      DryingForecaster times,
      double mostPlasticiser,
      double thinnestM,
      double thickestM) {
    SurfaceRange starch = new SurfaceRange(blend.castFrom(), blend.levelsUpTo());
    SurfaceRange plasticiser = new SurfaceRange(0, mostPlasticiser);
    SurfaceRange logThickness = new SurfaceRange(Math.log(thinnestM), Math.log(thickestM));
    double[][] points = new double[NODES][];
    double[] means = new double[NODES];
    double[] sds = new double[NODES];
    double[] shares = new double[NODES];
    IntStream.range(0, NODES)
        .parallel()
        .forEach(
            node -> {
              double x = chebyshev(node % STARCH_NODES, STARCH_NODES);
              double y = chebyshev(node / STARCH_NODES % PLASTICISER_NODES, PLASTICISER_NODES);
              double z = chebyshev(node / STARCH_NODES / PLASTICISER_NODES, THICKNESS_NODES);
              Design design =
                  new Design(
                      blend, starch.at(x), plasticiser.at(y), 0, Math.exp(logThickness.at(z)), 1);
              double[] ready = times.readyS(request.casting(design), Spot.THICK_SPOT);
              double[] logs =
                  Arrays.stream(ready).filter(Double::isFinite).map(Math::log).toArray();
              double mean = Arrays.stream(logs).average().orElse(Math.log(NEVER_S));
              double variance =
                  Arrays.stream(logs).map(log -> (log - mean) * (log - mean)).average().orElse(0);
              points[node] = new double[] {x, y, z};
              means[node] = mean;
              sds[node] = Math.sqrt(variance);
              shares[node] = (double) logs.length / ready.length;
            });
    return new DryingSurface(
        starch,
        plasticiser,
        logThickness,
        SmoothSurface.fit(points, means),
        SmoothSurface.fit(points, sds),
        SmoothSurface.fit(points, shares));
  }

  /** A root of Chebyshev's polynomial, between -1 and 1. */
  private static double chebyshev(int node, int count) {
    return -Math.cos(Math.PI * (node + 0.5) / count);
  }

  double thinnestM() {
    return Math.exp(logThickness.from());
  }

  double thickestM() {
    return Math.exp(logThickness.to());
  }

  /** When the thick spot is ready in the middle of the likely cases (s). */
  double middleS(Design design) {
    return Math.exp(at(logMean, design));
  }

  /** How {@code ln t} rises with {@code ln h}, over the whole surface. */
  double slope(Design design) {
    double thin = Math.log(middleS(design.poured(thinnestM())));
    double thick = Math.log(middleS(design.poured(thickestM())));
    return (thick - thin) / Math.log(thickestM() / thinnestM());
  }

  /** Share of the likely cases in which the thick spot is ready by a moment. */
  double chance(Design design, double byS) {
    double sd = Math.max(NARROWEST_LOG_SD, at(logSd, design));
    double ready = Math.min(1, Math.max(0, at(share, design)));
    return ready * NORMAL.cumulativeProbability((Math.log(byS) - at(logMean, design)) / sd);
  }

  /** The moment (s) by which a share of the likely cases is ready; infinite where it never is. */
  double readyS(Design design, double sure) {
    double ready = Math.min(1, Math.max(0, at(share, design)));
    if (ready <= sure) {
      return Double.POSITIVE_INFINITY;
    }
    double z = NORMAL.inverseCumulativeProbability(sure / ready);
    return Math.exp(at(logMean, design) + z * at(logSd, design));
  }

  /**
   * The thickest pour of a paste that is ready by a moment.
   *
   * @return wet thickness (m); 0 where not even the thinnest is, and the thickest where that is
   */
  double thickestReady(Design design, double byS, double sure) {
    if (chance(design.poured(thinnestM()), byS) < sure) {
      return 0;
    }
    if (chance(design.poured(thickestM()), byS) >= sure) {
      return thickestM();
    }
    double log =
        new BrentSolver(THICKNESS_ACCURACY)
            .solve(
                ROOT_EVALUATIONS,
                logM -> chance(design.poured(Math.exp(logM)), byS) - sure,
                logThickness.from(),
                logThickness.to());
    return Math.exp(log);
  }

  private double at(SmoothSurface surface, Design design) {
    return surface.at(
        starch.scaled(design.starchInPaste()),
        plasticiser.scaled(design.plasticiser()),
        logThickness.scaled(Math.log(design.wetThicknessM())));
  }
}
