package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.notebook.NotebookReader;

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

  /** In 2026 the clocks of Berlin were put forward on 29 March and back on 25 October. */
  @ParameterizedTest
  @CsvSource({"2026-03-28, 2026-03-29, forward, 23", "2026-10-24, 2026-10-25, back, 25"})
  void countsTheHoursThatPassedWhereTheClocksChangedAndSaysSo(
      String pour, String next, String how, int hours) throws IOException {
    Path file = Files.writeString(folder.resolve("t.json"), TRIAL.formatted(pour, next));
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));

      Outcome check = Outcome.of(folder, "check", "t.json");

      assertThat(check.out() + check.err())
          .contains(
              "weighings[2].at: the clocks were put %s between the pour and this; counted as %d h after the pour"
                  .formatted(how, hours))
          .doesNotContain("weighings[1].at");
      assertThat(NotebookReader.read(List.of(file)).trials().get(0).seen().weighings())
          .extracting(Weighing::timeS)
          .containsExactly(2 * 3600.0, hours * 3600.0);
    } finally {
      TimeZone.setDefault(before);
    }
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
