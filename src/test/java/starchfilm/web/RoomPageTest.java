package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import starchfilm.web.Served.Content;

/** The room of a trial: a log sent from the page, a day and a night. */
class RoomPageTest {
  private static final String PAGE = "/trial/room?file=" + DryingTrial.FILE;

  private Path file;
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.DRYING) RunningSite served) {
    site = served;
    file = site.folder().resolve(DryingTrial.FILE);
  }

  private HttpResponse<String> send(String csv) {
    return site.postFile(
        "/trial/log",
        "log",
        DryingTrial.FILE,
        "../Mein Log.csv",
        csv.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void keepsALogBesideTheTrialAndDrawsWhatWasRead() throws IOException {
    HttpResponse<String> answer =
        send("Logger 7\nTime,Temp (\u00B0F),RH\n2026-04-19 10:00,68,50\n2026-04-20 12:00,59,60\n");

    assertThat(answer.statusCode()).isEqualTo(303);
    String page = site.get(answer.headers().firstValue("Location").orElseThrow()).body();
    assertThat(page)
        .contains("The log is kept beside the trial", "15–20 °C, logged", "<polyline")
        .contains("1 line above the readings");
    assertThat(site.folder().resolve("drying-room.csv")).exists();
    assertThat(Files.readString(file))
        .contains("\"log_csv\": \"drying-room.csv\"", "\"name\": \"kitchen\"")
        .doesNotContain("air_C", "rh_pct");
  }

  @Test
  void keepsNothingOfALogThatCannotBeRead() throws IOException {
    String before = Files.readString(file);

    HttpResponse<String> answer = send("2026-04-19 10:00,63,12.5\n2026-04-19 11:00,61,13.5\n");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("columns without names");
    assertThat(Files.readString(file)).isEqualTo(before);
    try (Stream<Path> files = Files.list(site.folder())) {
      assertThat(files).noneMatch(one -> one.toString().endsWith(".csv"));
    }
  }

  @Test
  void notesADayAndANight() throws IOException {
    HttpResponse<String> answer =
        site.post(
            "/trial/swing",
            "file",
            DryingTrial.FILE,
            "coolest_C",
            "8",
            "warmest_C",
            "18",
            "driest_rh_pct",
            "50",
            "dampest_rh_pct",
            "80",
            "warmest_at",
            "15:00");

    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(Files.readString(file))
        .contains("\"coolest_C\": 8", "\"warmest_at\": \"15:00\"")
        .doesNotContain("air_C");
    assertThat(site.get(PAGE).body()).contains("8–18 °C", "<polyline");
  }

  @Test
  void refusesASwingAtItsFieldInTheWordsOfTheForm() {
    HttpResponse<String> answer =
        site.post(
            "/trial/swing",
            ("file=%s=coolest_C=12=warmest_C=8=driest_rh_pct=50=dampest_rh_pct=80=warmest_at=12:00")
                .formatted(DryingTrial.FILE)
                .split("="));

    assertThat(answer.statusCode()).isEqualTo(422);
    Element faulty = Jsoup.parse(answer.body()).select("p.faulty:has(#coolest_C)").get(0);
    assertThat(faulty.select(".refusal").text())
        .contains("above \u201CAir temperature at its highest, \u00B0C\u201D given")
        .doesNotContain("_C");
    assertThat(faulty.select("input").hasAttr("autofocus")).isTrue();
  }

  @Test
  void keepsWhatWasTypedWhereASwingCannotBe() throws IOException {
    String before = Files.readString(file);

    HttpResponse<String> answer =
        site.post(
            "/trial/swing",
            "file",
            DryingTrial.FILE,
            "coolest_C",
            "cold",
            "warmest_C",
            "18",
            "driest_rh_pct",
            "50",
            "dampest_rh_pct",
            "80",
            "warmest_at",
            "");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("&quot;cold&quot; given", "value=\"18\"");
    assertThat(Files.readString(file)).isEqualTo(before);
  }
}
