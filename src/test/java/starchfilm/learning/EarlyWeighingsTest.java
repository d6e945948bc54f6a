package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import java.util.StringJoiner;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.NotebookReader;

/**
 * Many weighings in the first hours hardly tell the parameters apart. A simulation that is not
 * smooth enough to be differentiated then moves the fit for ever.
 */
class EarlyWeighingsTest {
  private static final LocalDateTime POURED = LocalDateTime.of(2026, 4, 19, 10, 0);

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(ints = {2, 8, 11, 12, 14, 16, 18, 20, 24, 28, 32, 37, 42, 44, 47})
  void comeToRest(int seed) throws IOException {
    Random random = new Random(seed);
    int count = 1 + random.nextInt(90);
    StringJoiner weighings = new StringJoiner(",", "[", "]");
    int minutes = 0;
    for (int i = 0; i < count; i++) {
      minutes += 1 + random.nextInt(6);
      weighings.add(
          "{\"at\": \"%s\", \"mass_g\": %s}"
              .formatted(POURED.plusMinutes(minutes), (7_400 - minutes) / 10.0));
    }
    Files.writeString(
        folder.resolve("plate.json"),
        """
        {"name": "Plate", "poured_at": "%s",
         "recipe": {"starch": [{"kind": "potato", "mass_g": 12, "moisture_pct": 17}],
                    "glycerol": {"mass_g": 4.2, "purity_pct": 99}, "water": {"mass_g": 300}},
         "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 14},
         "pour": {"plate": {"material": "glass", "length_mm": 300, "width_mm": 200,
                            "thickness_mm": 4, "tare_g": 598}, "poured_g": 150},
         "room": {"name": "kitchen", "air_C": 20, "rh_pct": 50},
         "weighings": %s}
        """
            .formatted(POURED, weighings));
    List<Trial> trials = NotebookReader.read(List.of(folder)).trials();

    Learner learner = Learner.taughtBy(trials, folder, () -> {});

    assertThat(learner.leftOut()).isEmpty();
    assertThat(learner.plates()).hasSize(1);
  }
}
