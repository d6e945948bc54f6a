package starchfilm.files.amount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** It is Saturday, 4 April 2026, 14:20 in Berlin; the clocks went forward on 29 March. */
class MomentParserTest {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final Clock CLOCK =
      Clock.fixed(LocalDateTime.of(2026, 4, 4, 14, 20).atZone(BERLIN).toInstant(), BERLIN);
  private static final MomentParser PARSER = new MomentParser(CLOCK);

  @ParameterizedTest
  @CsvSource({
    "now, 2026-04-04T14:20",
    "14:20, 2026-04-04T14:20",
    "7:05, 2026-04-04T07:05",
    "18:30, 2026-04-03T18:30",
    "today 9:00, 2026-04-04T09:00",
    "yesterday 18:30, 2026-04-03T18:30",
    "Yesterday at 18:30, 2026-04-03T18:30",
    "friday 7:15, 2026-04-03T07:15",
    "sat 7:15, 2026-04-04T07:15",
    "saturday 18:00, 2026-03-28T18:00",
    "20 min ago, 2026-04-04T14:00",
    "1d 2h ago, 2026-04-03T12:20",
    "2026-04-02T18:30, 2026-04-02T18:30",
    "2026-04-02 18:30, 2026-04-02T18:30",
    "2.4.2026 18:30, 2026-04-02T18:30",
    "02.04.2026 8:30, 2026-04-02T08:30",
    "yesterday evening, 2026-04-03T18:00",
    "fri 6pm, 2026-04-03T18:00",
    "2 Apr 8:30, 2026-04-02T08:30",
    "2.4. 18:30, 2026-04-02T18:30",
    "24 Dec 18:00, 2025-12-24T18:00",
    "gestern 18 Uhr, 2026-04-03T18:00",
  })
  void byTheClock(String text, LocalDateTime time) {
    assertThat(PARSER.parse(text)).isEqualTo(new Moment.ByTheClock(time));
  }

  /** The clock on the wall is two hours ahead of UTC then, and one before 29 March. */
  @ParameterizedTest
  @CsvSource({
    "2026-04-02T18:30Z, 2026-04-02T20:30",
    "2026-04-02t18:30z, 2026-04-02T20:30",
    "2026-03-02 18:30:00Z, 2026-03-02T19:30",
    "2026-04-02T18:30+02:00, 2026-04-02T18:30",
    "2026-04-02T18:30+02, 2026-04-02T18:30",
    "2026-04-02T18:30-0500, 2026-04-03T01:30",
  })
  void anOffsetFromUtcIsReckonedIn(String text, LocalDateTime time) {
    assertThat(PARSER.parse(text)).isEqualTo(new Moment.ByTheClock(time));
    assertThat(PARSER.coming(text)).hasValue(time);
  }

  @Test
  void aFileKeepsTheTimeOfTheWallWhateverStandsBehindIt() {
    assertThat(MomentParser.lasting("2026-04-02T18:30-05:00"))
        .isEqualTo(new Moment.ByTheClock(LocalDateTime.of(2026, 4, 2, 18, 30)));
  }

  /** Neither becomes another day in silence: year 1 became 2001, 29 February the 28th. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0001-01-01 00:00 | allowed a year from 1900 on; check the year",
        "1.4.0026 18:00 | allowed a year from 1900 on; check the year",
        "29.2. 18:00 | 2026 has no 29 February; write the year",
        "29 Feb 18:00 | 2026 has no 29 February; write the year",
        "2026-04-02T18:30+19:00 | allowed an offset from UTC, -18:00 to +18:00; correct it, or"
            + " leave it out",
      })
  void noOtherDayIsTaken(String text, String why) {
    assertThatThrownBy(() -> PARSER.parse(text)).hasMessageEndingWith(why);
  }

  @ParameterizedTest
  @CsvSource({
    "2 April 2026, 2026-04-02T12:00",
    "2026-04-02, 2026-04-02T12:00",
    "hier, 2026-04-03T12:00",
    "friday, 2026-04-03T12:00",
    "friday 7:15,",
    "now,",
    "noon,",
  })
  void aDayWithoutAnHourStandsForItsNoon(String text, @Nullable LocalDateTime noon) {
    assertThat(PARSER.noonOf(text)).isEqualTo(Optional.ofNullable(noon));
  }

  @Test
  void countedFromThePour() {
    assertThat(PARSER.parse("+6h")).isEqualTo(new Moment.SincePour(21_600));
    assertThat(MomentParser.lasting("+1d 12h")).isEqualTo(new Moment.SincePour(129_600));
    assertThat(new Moment.SincePour(60).secondsSince(Optional.empty())).hasValue(60);
  }

  @Test
  void secondsSinceThePour() {
    Moment moment = PARSER.parse("2026-04-02 18:30");
    LocalDateTime pour = LocalDateTime.of(2026, 4, 2, 10, 0);
    assertThat(moment.secondsSince(Optional.of(pour))).hasValue(30_600);
    assertThat(moment.secondsSince(Optional.empty())).isEmpty();
  }

  @Test
  void agoCountsAcrossTheClockChange() {
    // 29 March had 23 hours: seven times 24 hours before 14:20 it was 13:20.
    assertThat(PARSER.parse("168h ago"))
        .isEqualTo(new Moment.ByTheClock(LocalDateTime.of(2026, 3, 28, 13, 20)));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-04-03T18:30, 2026-04-02T10:00, 2026-04-03T18:30",
    "2026-03-29T10:00, 2026-03-28T10:00, +23h",
    "2026-03-29T10:20, 2026-03-28T22:05, +11h 15min",
    "2026-10-25T10:00, 2026-10-24T10:00, +25h",
  })
  void noHourIsLostWhereTheClocksChange(LocalDateTime time, LocalDateTime pour, String text) {
    TimeZone home = TimeZone.getDefault();
    TimeZone.setDefault(TimeZone.getTimeZone(PARSER.clock().getZone()));
    try {
      assertThat(PARSER.lastingText(new Moment.ByTheClock(time), Optional.of(pour)))
          .isEqualTo(text);
    } finally {
      TimeZone.setDefault(home);
    }
  }

  @Test
  void whatIsKeptReadsBack() {
    for (double seconds : new double[] {0, 60, 3600, 5400, 90_000, 864_000}) {
      Moment moment = new Moment.SincePour(seconds);
      assertThat(MomentParser.lasting(PARSER.lastingText(moment, Optional.empty())))
          .isEqualTo(moment);
    }
  }

  @Test
  void aSpanThatNoCalendarHoldsIsRefused() {
    for (String typed : List.of("+999999999999999999d", "9e17 d ago", "999999999999999999 h ago")) {
      assertThatThrownBy(() -> PARSER.parse(typed)).as(typed).isInstanceOf(MistypedException.class);
    }
    assertThatThrownBy(() -> PARSER.coming("in 99999999999999999 days"))
        .isInstanceOf(MistypedException.class)
        .hasMessageContaining("up to 1000 years");
  }

  @Test
  void aTimeSinceAPourOfUnknownHourIsNotInTheFuture() {
    assertThatCode(() -> PARSER.refuseFuture(new Moment.SincePour(21_600), Optional.empty(), "+6h"))
        .doesNotThrowAnyException();
  }

  @Test
  void hourThatTheClocksSkipped() {
    assertThatThrownBy(() -> PARSER.parse("2026-03-29 02:30"))
        .isInstanceOf(MistypedException.class)
        .hasMessage(
            "\"2026-03-29 02:30\" given, allowed a time that the clocks showed;"
                + " the clocks skipped that hour; write one hour earlier or later");
  }

  @ParameterizedTest
  @CsvSource({
    "soon",
    "25:00",
    "2026-13-01 10:00",
    "someday 10:00",
    "yesterday noon evening",
    "4/2/2026 10:00",
    "friday",
    "+",
    "6h",
    "''"
  })
  void noMoment(String text) {
    assertThatThrownBy(() -> PARSER.parse(text))
        .isInstanceOf(MistypedException.class)
        .hasMessageContaining(" given, allowed ");
  }

  @Test
  void whatAFileKeepsMayNotDependOnToday() {
    assertThatThrownBy(() -> MomentParser.lasting("yesterday 18:30"))
        .hasMessage(
            "\"yesterday 18:30\" given, allowed a time such as +6h or 2026-04-02T18:30; write it"
                + " like one of these");
  }
}
