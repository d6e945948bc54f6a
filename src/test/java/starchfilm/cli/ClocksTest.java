package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Findings;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.roomlog.RoomLogReader;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.PourCalendar.ClockTick;

/** Clocks that are put forward or back, that go on between two looks, or are ahead. */
class ClocksTest {
  private static final String TRIAL =
      """
      {
        "name": "Over the night",
        "poured_at": "%1$sT18:00",
        "recipe": {"starch": {"kind": "potato", "mass_g": 20}, "water": {"mass_g": 360}},
        "pour": {
          "plate": {"length_mm": 300, "width_mm": 200, "tare_g": 600},
          "wet_thickness_mm": 2.5
        },
        "weighings": [{"at": "%1$sT20:00", "mass_g": 745}, {"at": "%2$sT18:00", "mass_g": 700}]
      }
      """;

  @TempDir Path folder;

  private final TimeZone home = TimeZone.getDefault();

  /** In 2026 the clocks of Berlin were put forward on 29 March and back on 25 October. */
  @ParameterizedTest
  @CsvSource({"2026-03-28, 2026-03-29, forward, 23", "2026-10-24, 2026-10-25, back, 25"})
  void countsTheHoursThatPassedWhereTheClocksChangedAndSaysSo(
      String pour, String next, String how, int hours) throws IOException {
    Path file = Files.writeString(folder.resolve("t.json"), TRIAL.formatted(pour, next));

    Outcome check = Outcome.of(folder, "check", "t.json");

    assertThat(check.out() + check.err())
        .contains(
            "weighings[2].at: the clocks were put %s between the pour and this; counted as %d h after the pour"
                .formatted(how, hours))
        .doesNotContain("weighings[1].at");
    assertThat(NotebookReader.read(List.of(file)).trials().get(0).seen().weighings())
        .extracting(Weighing::timeS)
        .containsExactly(2 * 3600.0, hours * 3600.0);
  }

  @ParameterizedTest
  @CsvSource({"2026-03-28, 23, Sun 29 Mar", "2026-10-24, 25, Sun 25 Oct"})
  void saysTimesAfterTheChangeByTheClockOnTheWall(String pour, int hours, String next) {
    PourCalendar calendar = new PourCalendar(Optional.of(LocalDateTime.parse(pour + "T18:00")));
    double daySinceS = hours * 3600.0;

    assertThat(calendar.toTheMinute(daySinceS)).isEqualTo(next + ", 18:00");
    assertThat(calendar.window(daySinceS, daySinceS + 3600)).isEqualTo(next + ", 18:00 to 19:00");
    assertThat(calendar.clockTicks(daySinceS, 5))
        .extracting(ClockTick::label)
        .containsExactly("18:00", "0:00", "6:00", "12:00", "18:00");
    assertThat(calendar.clockTicks(daySinceS, 25))
        .filteredOn(tick -> !tick.label().equals("18:00"))
        .extracting(ClockTick::afterPourS)
        .doesNotHaveDuplicates()
        .contains(daySinceS - 3600);
  }

  @ParameterizedTest
  @CsvSource({"2026-03-28, 2026-03-29, 23", "2026-10-24, 2026-10-25, 25"})
  void readsALogByTheClockOnTheWallAndOneByHoursAsCounted(String pour, String next, int hours)
      throws IOException {
    String head = "%sT18:00,19,55\n".formatted(pour);
    String row = "%sT%s,20,60\n";
    Path file = folder.resolve("log.csv");
    Optional<LocalDateTime> poured = Optional.of(LocalDateTime.parse(pour + "T18:00"));

    Files.writeString(
        file,
        "time,air_C,rh_pct\n" + head + row.formatted(next, "1:00") + row.formatted(next, "18:00"));
    assertThat(log(file, poured)).containsExactly(0.0, 7.0, (double) hours);

    Files.writeString(file, "hours,air_C,rh_pct\n0,19,55\n8,20,60\n9,20,60\n10,20,60\n");
    assertThat(log(file, poured)).containsExactly(0.0, 8.0, 9.0, 10.0);
  }

  /** Seconds since 1970 and times with an offset pass evenly; the first is what the wall showed. */
  @ParameterizedTest
  @CsvSource({"2026-03-28T18:00, +02:00, +01:00", "2026-10-24T18:00, +01:00, +02:00"})
  void readsALogThatKnowsItsOffsetAsHoursThatPassed(
      LocalDateTime pour, ZoneOffset after, ZoneOffset before) throws IOException {
    Path file = folder.resolve("log.csv");
    List<Function<LocalDateTime, String>> writers =
        List.of(
            shown -> String.valueOf(shown.toEpochSecond(ZoneOffset.UTC)),
            shown -> String.valueOf(shown.toEpochSecond(ZoneOffset.UTC) * 1000),
            shown -> shown + ":00Z",
            shown -> shown + ":00-05:00",
            shown -> shown + ":00" + before,
            shown ->
                shown
                    .atOffset(before)
                    .withOffsetSameInstant(shown.equals(pour) ? before : after)
                    .toString());
    for (Function<LocalDateTime, String> writer : writers) {
      StringBuilder rows = new StringBuilder("time,air_C,rh_pct\n");
      for (int hour : List.of(0, 8, 9, 10)) {
        rows.append(writer.apply(pour.plusHours(hour))).append(",20,55\n");
      }
      Files.writeString(file, rows);

      assertThat(log(file, Optional.of(pour))).as("%s", rows).containsExactly(0.0, 8.0, 9.0, 10.0);
      assertThat(notices(file, pour)).as("%s", rows).noneMatch(told -> told.contains("were put"));
    }
  }

  @ParameterizedTest
  @CsvSource({"2026-03-28, 2026-03-29, forward", "2026-10-24, 2026-10-25, back"})
  void saysThatALoggerMayHaveKeptItsClock(String pour, String next, String how) throws IOException {
    Path file = folder.resolve("log.csv");
    String row = "%sT%s,20,60\n";
    String told =
        "the clocks were put %s during this log; its times are read as the clock on the wall showed them; if the logger's clock was not changed, they are an hour off from then on"
            .formatted(how);

    Files.writeString(
        file,
        "time,air_C,rh_pct\n"
            + row.formatted(pour, "18:00")
            + row.formatted(next, "1:00")
            + row.formatted(next, "18:00"));
    assertThat(notices(file, LocalDateTime.parse(pour + "T18:00"))).containsOnlyOnce(told);
    assertThat(notices(file, LocalDateTime.parse(next + "T17:00")))
        .as("within a day before the pour")
        .contains(told);

    Files.writeString(
        file, "time,air_C,rh_pct\n" + row.formatted(next, "6:00") + row.formatted(next, "18:00"));
    assertThat(notices(file, LocalDateTime.parse(next + "T06:00"))).doesNotContain(told);
  }

  private static List<String> notices(Path file, LocalDateTime poured) {
    Findings log = new Findings("log.csv");
    new RoomLogReader(log).read(file, Optional.of(poured), 0.1, new Findings("t.json"));
    assertThat(log.faults()).isEmpty();
    return log.notices().stream().map(told -> told.text()).toList();
  }

  private static List<Double> log(Path file, Optional<LocalDateTime> poured) {
    Findings log = new Findings("log.csv");
    List<Double> hours =
        new RoomLogReader(log)
            .read(file, poured, 0.1, new Findings("t.json")).orElseThrow().readings().stream()
                .map(reading -> reading.timeS() / 3600)
                .toList();
    assertThat(log.notices()).noneMatch(told -> told.text().contains("more than once"));
    return hours;
  }

  @BeforeEach
  void goToBerlin() {
    TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
  }

  @AfterEach
  void comeBack() {
    TimeZone.setDefault(home);
  }

  @ParameterizedTest
  @CsvSource({"thickness, --starch, potato 20g", "plan, --starch, potato"})
  void aDeadlineIsSaidBackAsTyped(String command, String option, String starch) {
    AtomicLong ns = new AtomicLong();
    Instant start = Instant.parse("2026-04-20T09:30:00.000100Z");
    InstantSource going = () -> start.plusNanos(ns.addAndGet(50_000));
    Terminal terminal = new Terminal(folder, going.withZone(ZoneOffset.UTC));

    String rest =
        command.equals("plan")
            ? "--glycerol 20g --plate 300x200mm --room 20C,50% --by"
            : "--water 400g --glycerol 6g --plate 300x200mm --room 20C,50% --by";
    String[] words =
        (command + "\n" + option + "\n" + starch + "\n" + rest.replace(' ', '\n') + "\nfri noon")
            .split("\n");

    assertThat(terminal.run(words)).as(terminal.err()).isZero();
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("By Fri 24 Apr, 12:00, poured now, Mon 20 Apr, 9:30.");
  }

  @Test
  void aPourThatHasNotHappenedYetIsNotNoted() throws IOException {
    Path file =
        Files.writeString(folder.resolve("t.json"), TRIAL.formatted("2026-04-18", "2026-04-19"));
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("note", "t.json", "--poured", "2026-05-01 10:00")).isEqualTo(2);

    assertThat(terminal.err())
        .contains("--poured: \"2026-05-01 10:00\" given, allowed a time up to now");
    assertThat(Files.readString(file)).contains("2026-04-18T18:00");
  }
}
