package starchfilm.material.air;

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

/** Time of one evaluation, the innermost call of the drying solver; wanted under 150 ns. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class PlateTransferBenchmark {
  private final PlateTransfer face = new PlateTransfer(0.3, 0.2, 0.01);
  private final WagnerPruss1993 saturation = new WagnerPruss1993();
  private double surfaceK = 288;

  @Benchmark
  public double evaluation() {
    surfaceK = surfaceK > 292 ? 288 : surfaceK + 1e-3;
    face.evaluate(surfaceK, 0.9);
    return face.vapourFluxKgPerM2S() + face.convectionWPerM2K() + face.radiationWPerM2K();
  }

  @Benchmark
  public double saturationPressure() {
    surfaceK = surfaceK > 292 ? 288 : surfaceK + 1e-3;
    return saturation.pa(surfaceK);
  }
}
