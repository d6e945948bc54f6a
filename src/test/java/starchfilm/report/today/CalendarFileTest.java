package starchfilm.report.today;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Workshops;
import starchfilm.today.ScaleCourse;
import starchfilm.today.Standing;
import starchfilm.today.Today;

/** Read by biweekly, which did not write it. */
class CalendarFileTest {
  @TempDir Path folder;

  private String calendar(String name, String now, String more) throws IOException {
    return CalendarFile.of(today(name, now, more), Instant.parse(now), standing -> "plate.json");
  }

  private Today today(String name, String now, String more) throws IOException {
    Path file = folder.resolve("plate.json");
    Files.writeString(
        file,
        """
        {"name": "%s", "poured_at": "2026-04-19T10:00",
         "recipe": {"starch": {"kind": "potato", "mass_g": 20.0},
                    "glycerol": {"mass_g": 6, "purity_pct": 99}, "water": {"mass_g": 360}},
         "pour": {"plate": {"material": "glass", "length_mm": 300, "width_mm": 200,
                            "tare_g": 600}, "plates": 2, "wet_thickness_mm": 2.5},
         "room": {"name": "kitchen", "air_C": 21, "rh_pct": 50}%s}
        """
            .formatted(name, more));
    Instant instant = Instant.parse(now);
    Workshops workshops = new Workshops(Clock.fixed(instant, ZoneOffset.UTC));
    TrialForecaster forecaster = new TrialForecaster(workshops);
    return Today.of(
        NotebookReader.read(List.of(file)).trials(),
        LocalDateTime.ofInstant(instant, ZoneOffset.UTC),
        trial -> Optional.of(forecaster.forecast(trial)),
        ScaleCourse::of);
  }

  private static VEvent event(String text) {
    ICalendar calendar = Biweekly.parse(text).first();
    assertThat(calendar.validate(ICalVersion.V2_0).getWarnings()).isEmpty();
    return calendar.getEvents().get(0);
  }

  @Test
  void isReadByAnotherLibraryWithoutAWarning() throws IOException {
    String name =
        "Blend; 1, \\\\ with \u00fc and a very long name that has to be folded over lines";
    VEvent event = event(calendar(name, "2026-04-20T12:00:00Z", ""));

    assertThat(event.getSummary().getValue())
        .isEqualTo("Look at " + name.replace("\\\\", "\\") + " (2 plates)");
    assertThat(event.getDateEnd().getValue()).isAfter(event.getDateStart().getValue());
    assertThat(event.getAlarms()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 6, 9, 12, 15, 18, 21, 23})
  void sendsNobodyToAPlateAtNight(int hour) throws IOException {
    Standing plate =
        today("Blend", "2026-04-20T%02d:10:00Z".formatted(hour), "").standings().get(0);
    LocalDateTime poured = plate.forecast().trial().pouredAt().orElseThrow();

    assertThat(List.of(plate.lookFromS(), plate.lookUntilS()))
        .allSatisfy(
            s ->
                assertThat(poured.plusSeconds(Math.round(s)).toLocalTime())
                    .isBetween(LocalTime.of(7, 0), LocalTime.of(22, 0)));
    assertThat(plate.lookFromS()).isGreaterThanOrEqualTo(plate.nowS());
    assertThat(plate.lookUntilS()).isGreaterThanOrEqualTo(plate.lookFromS());
    if (hour == 23 || hour < 6) {
      assertThat(new PlateNow(plate).look()).contains("7:00").contains("not at night");
    }
  }

  @Test
  void movesAnEventAtASecondImport() throws IOException {
    VEvent first = event(calendar("Blend", "2026-04-20T12:00:00Z", ""));
    VEvent second =
        event(
            calendar(
                "Blend",
                "2026-04-20T18:00:00Z",
                ", \"weighings\": [{\"at\": \"+30h\", \"mass_g\": 620}, {\"at\": \"+30h\","
                    + " \"mass_g\": 620, \"plate\": 2}]"));

    assertThat(second.getUid().getValue()).isEqualTo(first.getUid().getValue());
    assertThat(second.getSequence().getValue()).isGreaterThan(first.getSequence().getValue());
    assertThat(second.getDateStart().getValue()).isBefore(first.getDateStart().getValue());
  }

  @Test
  void cancelsTheEventOfAPlateThatIsOff() throws IOException {
    VEvent looked = event(calendar("Blend", "2026-04-20T12:00:00Z", ""));
    VEvent off = event(calendar("Blend", "2026-04-21T12:00:00Z", ", \"rating\": 5"));

    assertThat(off.getUid().getValue()).isEqualTo(looked.getUid().getValue());
    assertThat(off.getSequence().getValue()).isGreaterThan(looked.getSequence().getValue());
    assertThat(off.getStatus().isCancelled()).isTrue();
  }

  @Test
  void foldsLinesAt75OctetsAndEndsThemWithCarriageReturnAndLineFeed() throws IOException {
    String text = calendar("\u00fc".repeat(150), "2026-04-20T12:00:00Z", "");

    assertThat(text.split("\r\n"))
        .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
    assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
  }
}
