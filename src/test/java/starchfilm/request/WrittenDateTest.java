package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenDateTest {
  /** A Monday. */
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  /** A clock that goes on between two looks at it. */
  private static Clock going() {
    AtomicLong ms = new AtomicLong(NOON.millis());
    return new Clock() {
      @Override
      public ZoneId getZone() {
        return NOON.getZone();
      }

      @Override
      public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException();
      }

      @Override
      public Instant instant() {
        return Instant.ofEpochMilli(ms.addAndGet(4));
      }
    };
  }

  @Test
  void noTimeIsNoTimeToComeWhileTheClockGoesOn() {
    assertThatThrownBy(() -> WrittenDate.secondsFromNow("0d", going()))
        .hasMessageContaining("allowed a moment after now");
    assertThat(WrittenDate.secondsFromNow("5d", going())).isEqualTo(5 * 86_400.0);
  }

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
    "in 2 days, 48",
    "two days, 48",
    "1w, 168",
    "5d from the pour, 120",
    "5d after the pour, 120",
    "12:30, 0.5",
    "12:00, 24",
    "noon, 24",
    "today 18:00, 6",
    "tonight, 9",
    "tomorrow evening, 30",
    "sat noon, 120",
    "saturday 6pm, 126",
    "next friday 6:30 pm, 102.5",
    "22 Apr, 48",
    "April 22 18:00, 54",
    "22nd of April 2026, 48",
    "22.4., 48",
    "22.04. 18 Uhr, 54",
    "22/04/2026, 48",
    "4/22/2026 6pm, 54",
    "4 Jan 2027, 6216",
    "4 Jan, 6216",
    "Freitag, 96",
    "morgen Abend, 30",
    "vendredi 18h, 102",
    "ma\u00F1ana por la tarde, 27",
  })
  void readsWhenItMustBeReady(String typed, double hours) {
    assertThat(WrittenDate.secondsFromNow(typed, NOON) / 3600).isCloseTo(hours, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3/4/2026 | this could be 3 Apr or 4 Mar; write the month as a word",
        "31.2. | check day and month",
        "saturday 25:00 | check hour and minute",
        "2026-04-19 | it is past; write a time from now, such as 5d, or a later day",
        "soonish | write it like one of these",
        "9999-12-31 | check the date; no film dries that long",
        "3650d | check the date; no film dries that long",
        "2-3 days | a range is of no use here; write one number",
      })
  void whatIsNoMomentToComeIsAsked(String typed, String mend) {
    assertThatThrownBy(() -> WrittenDate.secondsFromNow(typed, NOON)).hasMessageEndingWith(mend);
  }
}
