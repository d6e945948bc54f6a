package starchfilm.numerics.diffusion;

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

/**
 * One integration of {@link DryingLikeFilm} in a steady room from wet to rest: cost a run, and how
 * it grows with the number of nodes.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DiffusionBenchmark {
  /** Nodes of the grid. */
  @Param({"40", "80", "160"})
  public int nodes;

  private RosenbrockIntegrator thirdOrder;
  private RosenbrockIntegrator fourthOrder;
  private double[] start;
  private double[] state;

  /** Builds the system once; a run allocates nothing. */
  @Setup
  public void build() {
    Grid grid = Grid.fineAtUpperFace(nodes, 10);
    DryingLikeFilm film = DryingLikeFilm.inASteadyRoom();
    Tolerance tolerance = new Tolerance(1e-3, 1e-3, 1e-3);
    thirdOrder = new RosenbrockIntegrator(film.system(grid), tolerance);
    fourthOrder = ReferenceIntegrator.of(film.system(grid), tolerance);
    start = film.start(grid);
    state = start.clone();
  }

  /** The method of order 3. */
  @Benchmark
  public double order3() {
    return run(thirdOrder);
  }

  /** The method of order 4. */
  @Benchmark
  public double order4() {
    return run(fourthOrder);
  }

  private double run(RosenbrockIntegrator integrator) {
    System.arraycopy(start, 0, state, 0, start.length);
    return integrator.integrate(0, 100, 1e-4, 100, state, step -> true);
  }
}
