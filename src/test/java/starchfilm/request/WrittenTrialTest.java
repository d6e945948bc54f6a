package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.Weighing;

class WrittenTrialTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "6h=412g, 21600, 0.112",
    "+1d 12h = 388.5 g, 129600, 0.0885",
    "today 9:00=412g, 10800, 0.112"
  })
  void aWeighingIsCountedFromThePourOrByTheClock(String typed, double seconds, double kg) {
    Weighing weighing = weighed(typed);

    assertThat(weighing.timeS()).isCloseTo(seconds, within(1e-6));
    assertThat(weighing.filmMassKg()).isCloseTo(kg, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "6h 412g, join time and mass with one =",
    "-6h=412g, a plate cannot be weighed before the pour",
    "'6h=0g', 'write what the scale showed, above 0 g'",
  })
  void aWeighingThatCannotBeIsRefused(String typed, String mend) {
    assertThatThrownBy(() -> weighed(typed))
        .hasMessage(
            "--weighed: \"%s\" given, allowed time=mass, such as 6h=412g or 1d12h=388.5g; %s"
                .formatted(typed, mend));
  }

  private Weighing weighed(String typed) {
    Map<String, String> words =
        Map.of(
            "--starch", "potato 20g",
            "--water", "360g",
            "--wet", "3mm",
            "--plate,--plates", "30x20cm glass",
            "--tare", "300g",
            "--poured", "2026-04-20 6:00",
            "--weighed", typed);
    return TrialQuestion.read(Written.options(words), Optional.empty(), folder, NOON)
        .trial()
        .seen()
        .weighings()
        .get(0);
  }
}
