package starchfilm.planning;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.material.ingredient.StarchKind;

/** How long a plan takes once the program is warm; never part of the test run. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class PlannerBenchmark {
  private final Planner planner = new Planner(ParameterDistribution.textbook());

  /** One starch. */
  @Benchmark
  public Plan oneStarch() {
    return planner.plan(Requests.garden());
  }

  /** Three starches, and their blend. */
  @Benchmark
  public Plan threeStarchesAndTheirBlend() {
    return planner.plan(
        Requests.garden()
            .with(
                new Supplies(
                    Requests.recovered(),
                    0.25,
                    List.of(
                        Requests.plenty(StarchKind.POTATO),
                        Requests.plenty(StarchKind.TAPIOCA),
                        Requests.plenty(StarchKind.CORN)),
                    0.05)));
  }
}
