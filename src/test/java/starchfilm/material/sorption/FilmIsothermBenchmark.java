package starchfilm.material.sorption;

import java.util.Map;
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
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** Time to build an isotherm (wanted under 15 us) and to read it (under 30 ns). */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class FilmIsothermBenchmark {
  private final Composition film =
      FilmCompositions.of(Map.of(StarchKind.POTATO, 0.5, StarchKind.TAPIOCA, 0.5), 0.23, 0.005);
  private final FilmIsotherm isotherm = FilmIsotherm.of(film);
  private double moisture = 0.05;

  @Benchmark
  public FilmIsotherm build() {
    return FilmIsotherm.of(film);
  }

  @Benchmark
  public double activity() {
    return isotherm.activity(next());
  }

  @Benchmark
  public double activitySlope() {
    return isotherm.activitySlope(next());
  }

  private double next() {
    moisture = moisture > 10 ? 0.05 : moisture * 1.013;
    return moisture;
  }
}
