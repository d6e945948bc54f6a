package starchfilm.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Spans;

class TimesTest {
  private static final double HOUR = 3_600;
  private static final double DAY = 86_400;
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static final PourCalendar UNDATED = new PourCalendar(Optional.empty());

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
  void aRangeWhoseEndsReadTheSameIsLeftOut() {
    assertThat(Spans.of(new Band(15 * HOUR, 15.1 * HOUR, 15.2 * HOUR))).isEqualTo("15 hours");
  }

  @Test
  void besideALongerTimeBothHaveItsUnit() {
    assertThat(Spans.of(new Band(24 * HOUR, 36 * HOUR, 48 * HOUR), 5 * DAY))
        .isEqualTo("1.5 days (1.0–2.0)");
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
    assertThat(dated.byTheHour(15 * HOUR)).isEqualTo("Tue 29 Dec, 10:00");
    assertThat(dated.byTheHour(6 * DAY)).isEqualTo("Sun 3 Jan 2027");
  }

  @Test
  void aRangeOfDatesIsSaidOneWay() {
    assertThat(dated.range(new Band(12.4 * HOUR, 14.6 * HOUR, 16.6 * HOUR)))
        .isEqualTo("Tue 29 Dec, about 9:00 (7–11)");
    assertThat(dated.range(new Band(14.4 * HOUR, 14.6 * HOUR, 14.7 * HOUR)))
        .isEqualTo("Tue 29 Dec, about 9:00");
    assertThat(dated.range(new Band(3.6 * HOUR, 6.6 * HOUR, 9.6 * HOUR)))
        .isEqualTo("Tue 29 Dec, about 1:00 (Mon 22:00 to Tue 4:00)");
    assertThat(dated.range(new Band(1.5 * DAY, 2 * DAY, 3 * DAY)))
        .isEqualTo("Wed 30 Dec, about 19:00 (7:00 to Thu 19:00)");
    assertThat(dated.range(new Band(1.1 * DAY, 2 * DAY, 3.2 * DAY)))
        .isEqualTo("Wed 30 Dec (Tue 29 Dec to Thu 31 Dec)");
    assertThat(dated.range(new Band(2 * DAY, 3 * DAY, NEVER)))
        .isEqualTo("Thu 31 Dec (Wed 30 Dec to never)");
    assertThat(UNDATED.range(new Band(28 * HOUR, 41 * HOUR, 62 * HOUR)))
        .isEqualTo("after 41 hours (28–62)");
  }

  @Test
  void undatedPoursCountDays() {
    assertThat(UNDATED.moment(3.4 * DAY)).isEqualTo("day 3.4");
    assertThat(UNDATED.clockTicks(DAY, 9)).isEmpty();
  }

  @Test
  void ticksNameWeekdaysUntilTheyLieFarApart() {
    assertThat(dated.clockTicks(DAY, 9))
        .extracting(PourCalendar.ClockTick::label)
        .contains("0:00", "12:00");
    assertThat(dated.clockTicks(20 * DAY, 9))
        .extracting(PourCalendar.ClockTick::label)
        .allMatch(label -> label.matches("[A-Z][a-z]{2} [0-9]+"));
  }
}
