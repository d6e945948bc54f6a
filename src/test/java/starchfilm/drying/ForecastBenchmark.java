package starchfilm.drying;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.material.wetfilm.FilmMaterial;
import starchfilm.numerics.diffusion.RosenbrockIntegrator;

/**
 * How long a drying forecast takes; never part of the test run.
 *
 * <p>The case: 3 mm of a paste of 8 % dry rice starch and 2.4 % glycerol poured at 60 C on 4 mm of
 * glass, 200 by 200 mm, 25 % uneven; air 20 C, 50 %, 0.1 m/s; the equations of {@link SpotSolver}
 * and {@link PlateExchange} on 40 cells (41 nodes) and the plate's temperature, followed until dry
 * through, which takes about three days of the ten.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ForecastBenchmark {
  /** Nodes of the grid; 5 for forecasts of a layer that is open above. */
  @Param({"5", "41", "161"})
  public int nodes;

  private PreparedCase prepared;
  private SpotSolver solver;
  private final SpotSolution trace = new SpotSolution();

  /** Prepares the tables. */
  @Setup
  public void prepare() {
    prepared = PreparedCase.of(Castings.USUAL);
    solver =
        new SpotSolver(
            prepared,
            new double[0],
            SpotSolver.grid(Castings.USUAL, nodes),
            system -> new RosenbrockIntegrator(system, SpotSolver.TOLERANCE));
  }

  /**
   * One solve with its tables at hand.
   *
   * @return time of dry-through (s)
   */
  @Benchmark
  public double solve() {
    solver.solve(Spot.NOMINAL, ParameterSample.NONE, 10 * 86_400.0, trace);
    return trace.milestoneS[Milestone.DRY_THROUGH.ordinal()];
  }

  /**
   * The tables of one paste.
   *
   * @return the tables
   */
  @Benchmark
  public Object tables() {
    return FilmMaterial.of(
        Castings.USUAL.composition(), Castings.USUAL.composition().waterKgPerKgDry());
  }

  /**
   * A band of three spots from 1,000 draws on all cores.
   *
   * @return the forecast
   */
  @Benchmark
  public DryingForecast bandOfThousandDraws() {
    return new DryingForecaster(ParameterDistribution.textbook(), 1000).forecast(Castings.USUAL);
  }
}
