package starchfilm.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nobody gets up in the night for a plate. */
class WakingHoursTest {
  @ParameterizedTest
  @CsvSource({
    "2026-11-28T01:00, 2026-11-28T07:00, 2026-11-27T22:00",
    "2026-11-28T06:59, 2026-11-28T07:00, 2026-11-27T22:00",
    "2026-11-28T07:00, 2026-11-28T07:00, 2026-11-28T07:00",
    "2026-11-28T13:20, 2026-11-28T13:20, 2026-11-28T13:20",
    "2026-11-28T22:00, 2026-11-29T07:00, 2026-11-28T22:00",
    "2026-12-31T23:30, 2027-01-01T07:00, 2026-12-31T22:00"
  })
  void lookBeginsInTheMorningAndEndsInTheEvening(
      LocalDateTime moment, LocalDateTime after, LocalDateTime before) {
    assertThat(WakingHours.atOrAfter(moment)).isEqualTo(after);
    assertThat(WakingHours.atOrBefore(moment)).isEqualTo(before);
  }
}
