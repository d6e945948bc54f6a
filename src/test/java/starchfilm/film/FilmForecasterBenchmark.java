package starchfilm.film;

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
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Pour;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;

/** Time of one film forecast, which a search over recipes makes by the thousand. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class FilmForecasterBenchmark {
  private final FilmForecaster forecaster = new FilmForecaster();
  private final Casting unsure =
      Castings.film(Castings.paste(StarchKind.POTATO, 0.04, 0.3, 0.01, 0.005))
          .with(new Paste(Castings.paste(StarchKind.POTATO, 0.04, 0.3, 0.01, 0.005), 1, 0.03, 0.1))
          .with(Castings.cook(15, 90))
          .with(new Pour(new Estimate(2.5e-3, 0.2e-3), 0.25, 333.15))
          .with(new Use(0.5, Castings.ROOM_K, 86_400));
  private final DryingMechanics skin = DryingMechanics.of(unsure.composition());
  private double moisture = 0.1;

  @Benchmark
  public FilmForecast forecast() {
    return forecaster.forecast(unsure);
  }

  @Benchmark
  public double skinStretch() {
    moisture = moisture > 1 ? 0.1 : moisture + 1e-4;
    return skin.modulusPa(moisture, 293);
  }
}
