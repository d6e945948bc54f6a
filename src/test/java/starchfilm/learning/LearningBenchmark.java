package starchfilm.learning;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * How long a notebook of 50 trials of 10 weighings takes to learn from; never part of the tests.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1, time = 5)
@Measurement(iterations = 3, time = 5)
public class LearningBenchmark {
  private static final double[] TEN_WEIGHINGS = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};

  private final SyntheticPlates plates = new SyntheticPlates(3);
  private final ParameterSample truth =
      ParameterSample.NONE
          .with(UncertainParameter.AIR_SIDE, Math.log(0.6))
          .with(UncertainParameter.DIFFUSIVITY, Math.log(1.5));
  private final List<Trial> trials =
      Stream.generate(
              () -> SyntheticPlates.dried(plates.any("shed", "kitchen"), truth, TEN_WEIGHINGS))
          .limit(50)
          .toList();

  /** All of them anew. */
  @Benchmark
  public Workshop fiftyTrials() {
    return Workshop.taughtBy(Path.of(""), trials);
  }
}
