package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenDateTest {
  /** A Monday. */
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  @ParameterizedTest
  @CsvSource({
    "5d, 120",
    "36h, 36",
    "1d 12h, 36",
    "friday, 96",
    "Fri, 96",
    "on friday 18:00, 102",
    "monday, 168",
    "tomorrow, 24",
    "tomorrow 8:00, 20",
    "2026-04-22, 48",
    "22.4.2026, 48",
    "2026-04-22 18:30, 54.5",
    "22.4.2026 18:30, 54.5",
    "+6h, 6",
  })
  void readsWhenItMustBeReady(String typed, double hours) {
    assertThat(WrittenDate.secondsFromNow(typed, NOON) / 3600).isCloseTo(hours, within(1e-9));
  }
}
