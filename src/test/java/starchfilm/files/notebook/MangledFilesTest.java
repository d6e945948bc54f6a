package starchfilm.files.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.material.recipe.Paste;
import starchfilm.proof.DemoTrials;

/** However a file is mangled, it gives a sound trial or a fault, never an exception or a hang. */
@Timeout(120)
class MangledFilesTest {
  private static final int CASES = Integer.getInteger("starchfilm.mangled", 600);
  private static final String[] WORDS = {
    "-1",
    "0",
    "1e308",
    "-1e308",
    "NaN",
    "null",
    "true",
    "\"\"",
    "\"unknown\"",
    "{}",
    "[]",
    "[[]]",
    "{\"from\": 1}",
    "{\"from\": 5, \"to\": 1}",
    "0.5",
    "100",
    "\"+6h\"",
    "\"2026-04-03T10:00\"",
    "\"x\"",
  };

  @TempDir private Path folder;

  @Test
  void trialFilesWithValuesExchanged() {
    List<String> sound = formulations();
    Random random = new Random(1);
    for (int i = 0; i < CASES; i++) {
      String text = sound.get(random.nextInt(sound.size()));
      for (int n = 1 + random.nextInt(3); n > 0; n--) {
        text = exchangeValue(text, random);
      }
      assertWhole(TrialText.read(folder, text), text);
    }
  }

  @Test
  void trialFilesWithCharactersExchanged() {
    List<String> sound = formulations();
    Random random = new Random(2);
    for (int i = 0; i < CASES; i++) {
      byte[] bytes = sound.get(random.nextInt(sound.size())).getBytes(StandardCharsets.UTF_8);
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        bytes[random.nextInt(bytes.length)] =
            (byte) (random.nextInt(5) == 0 ? random.nextInt(256) : 32 + random.nextInt(95));
      }
      assertWhole(TrialText.read(folder, bytes), new String(bytes, StandardCharsets.ISO_8859_1));
    }
  }

  @Test
  void roomLogsWithCharactersExchanged() throws IOException {
    byte[] sound = Files.readAllBytes(Path.of("formulations/garden/shed-april.csv"));
    String trial =
        TrialText.with("room", "{\"log_csv\": \"log.csv\"}").replace("2026-04-02", "2026-04-18");
    Random random = new Random(3);
    for (int i = 0; i < CASES / 3; i++) {
      byte[] bytes = java.util.Arrays.copyOf(sound, 100 + random.nextInt(2000));
      for (int n = random.nextInt(6); n > 0; n--) {
        bytes[random.nextInt(bytes.length)] =
            (byte)
                (random.nextInt(4) == 0
                    ? random.nextInt(256)
                    : ";,.:-\"\n\t0123456789 ".charAt(random.nextInt(19)));
      }
      Files.write(folder.resolve("log.csv"), bytes);
      assertWhole(TrialText.read(folder, trial), new String(bytes, StandardCharsets.ISO_8859_1));
    }
  }

  private static void assertWhole(Notebook notebook, String text) {
    assertThat(notebook.trials().size() + Math.min(1, notebook.faults().size()))
        .as(text)
        .isEqualTo(1);
    for (Trial trial : notebook.trials()) {
      assertThat(Paste.cooked(trial.recipe()).composition().drySolids()).as(text).isPositive();
      assertThat(trial.casting().pour().wetThicknessM().value()).as(text).isPositive();
    }
    for (Fault fault : notebook.faults()) {
      assertThat(fault.sentence())
          .as(text)
          .contains("; ")
          .doesNotContain("com.fasterxml", "Exception");
    }
  }

  /** Puts another word in the place of one number, text or word of JSON. */
  private static String exchangeValue(String text, Random random) {
    String[] parts = text.split("(?<=: )|(?=[,}\\]])", -1);
    int at = random.nextInt(parts.length);
    if (!parts[at].isBlank() && !parts[at].contains("{")) {
      parts[at] = WORDS[random.nextInt(WORDS.length)];
    }
    return String.join("", parts);
  }

  private static List<String> formulations() {
    return DemoTrials.files().stream().map(MangledFilesTest::text).toList();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
