package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.NotebookReader;

class StoppedLearningTest {
  private static final int STOPPED_AFTER = 500;

  @Test
  void endsBeforeTheNextSimulation() {
    Path garden = Path.of("formulations/garden");
    List<Trial> trials = NotebookReader.read(List.of(garden)).trials();
    List<Trial> many = Collections.nCopies(200, trials).stream().flatMap(List::stream).toList();
    AtomicInteger steps = new AtomicInteger();

    assertThatThrownBy(
            () ->
                Workshop.taughtBy(
                    garden,
                    many,
                    () -> {
                      if (steps.incrementAndGet() > STOPPED_AFTER) {
                        throw new CancellationException("stopped");
                      }
                    }))
        .isInstanceOf(CancellationException.class);
    int processors = Runtime.getRuntime().availableProcessors();
    assertThat(steps.get())
        .as("each thread looks once more, then ends")
        .isLessThanOrEqualTo(STOPPED_AFTER + 50 * processors);
  }
}
