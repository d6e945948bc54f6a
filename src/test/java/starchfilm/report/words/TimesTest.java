package starchfilm.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Band;

class TimesTest {
  private static final double HOUR = 3_600;
  private static final double DAY = 86_400;
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final PourCalendar dated =
      new PourCalendar(Optional.of(LocalDateTime.of(2026, 12, 28, 18, 30)));

  @Test
  void shortWaitsAreToldInHours() {
    assertThat(Spans.of(new Band(24 * HOUR, 31 * HOUR, 40 * HOUR))).isEqualTo("31 hours (24–40)");
    assertThat(Spans.of(90 * 60)).isEqualTo("90 minutes");
  }

  @Test
  void longWaitsAreToldInDays() {
    assertThat(Spans.of(new Band(5 * DAY, 6.2 * DAY, 7.7 * DAY))).isEqualTo("6.2 days (5.0–7.7)");
  }

  @Test
  void saysNeverWhereItMayNotCome() {
    assertThat(Spans.of(new Band(5 * DAY, 6.2 * DAY, NEVER))).isEqualTo("6.2 days (5.0 to never)");
    assertThat(Spans.of(new Band(5 * DAY, NEVER, NEVER))).isEqualTo("never (5.0 to never)");
    assertThat(Spans.of(new Band(NEVER, NEVER, NEVER))).isEqualTo("never");
  }

  @Test
  void roughSpansAreWholeDays() {
    assertThat(Spans.rough(new Band(2.6 * DAY, 3.9 * DAY, 5.2 * DAY))).isEqualTo("3–5 days");
    assertThat(Spans.rough(new Band(2.9 * DAY, 3 * DAY, 3.2 * DAY))).isEqualTo("about 3 days");
    assertThat(Spans.rough(new Band(0.3 * DAY, 2.2 * DAY, 3.2 * DAY))).isEqualTo("at most 3 days");
    assertThat(Spans.rough(new Band(6 * DAY, NEVER, NEVER))).isEqualTo("6 days or more");
  }

  @Test
  void datesNameWeekdayAndMonth() {
    assertThat(dated.pour()).isEqualTo("Mon 28 Dec 2026, 18:30");
    assertThat(dated.moment(15 * HOUR)).isEqualTo("Tue 29 Dec, morning");
    assertThat(dated.moment(3.5 * DAY)).isEqualTo("Fri 1 Jan 2027");
    assertThat(dated.moment(NEVER)).isEqualTo("never");
    assertThat(dated.about(6 * DAY)).isEqualTo("about Sunday 3 January");
  }

  @Test
  void undatedPoursCountDays() {
    assertThat(PourCalendar.undated().moment(3.4 * DAY)).isEqualTo("day 3.4");
    assertThat(PourCalendar.undated().about(3.4 * DAY)).isEqualTo("about day 3.4");
    assertThat(PourCalendar.undated().tick(DAY, DAY)).isEmpty();
  }

  @Test
  void ticksNameWeekdaysUntilTheyLieFarApart() {
    assertThat(dated.tick(2 * DAY, DAY)).isEqualTo("Wed");
    assertThat(dated.tick(20 * DAY, 10 * DAY)).isEqualTo("17 Jan");
  }
}
