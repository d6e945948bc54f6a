package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weigh-out sheets and labels of trials. */
class SheetCommandTest {
  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() throws IOException {
    Files.copy(Path.of("formulations/garden/4-blend.json"), folder.resolve("4-blend.json"));
    terminal = new Terminal(folder);
  }

  @Test
  void printsASheetWithTheGramsOfTheTrial() throws IOException {
    assertThat(terminal.run("sheet", "4-blend.json", "--out", "sheet.html")).isZero();

    Document page = Jsoup.parse(Files.readString(folder.resolve("sheet.html")));
    assertThat(page.select(".page")).hasSize(1);
    assertThat(page.select(".amount b").eachText())
        .containsExactly("12 g", "6 g", "5.2 g", "8 g", "330 g");
    assertThat(page.text())
        .contains("Potato and tapioca", "Hold it at 90 °C for 10 min", "pour 150 g")
        .doesNotContain("as asked");
  }

  @Test
  void printsALabelForEachPlate() throws IOException {
    assertThat(terminal.run("sheet", "4-blend.json", "--labels", "labels.html")).isZero();

    Document page = Jsoup.parse(Files.readString(folder.resolve("labels.html")));
    assertThat(page.select(".label")).hasSize(2);
    assertThat(page.select(".label").first().text())
        .contains(
            "plate 1 of 2",
            "Poured Sat 11 Apr 2026, 10:00",
            "Empty plate 598 g",
            "Look: peelable Mon 13 Apr",
            "67 % potato, 33 % tapioca starch, water, glycerol, vinegar",
            "Not food.",
            "recovered from oil: may hold methanol and lye");
    assertThat(page.select(".label").last().text()).contains("Empty plate g");
  }

  @Test
  void aLabelHasTheEmptyMassOfItsOwnPlate() throws IOException {
    String text = Files.readString(folder.resolve("4-blend.json"));
    Files.writeString(
        folder.resolve("both.json"),
        text.replaceFirst(
            "\\{\\s*\"name\"", "{ \"plates\": [ { \"plate\": 2, \"tare_g\": 1604.5 } ], \"name\""));
    assertThat(terminal.run("sheet", "both.json", "--labels", "-")).as(terminal.err()).isZero();

    assertThat(Jsoup.parse(terminal.out()).select(".label").eachText())
        .satisfiesExactly(
            first -> assertThat(first).contains("Empty plate 598 g"),
            second -> assertThat(second).contains("Empty plate 1604.5 g"));
  }

  @Test
  void leavesBoughtGlycerolWithoutACautionAndAnUnpouredPlateBlank() throws IOException {
    String text = Files.readString(folder.resolve("4-blend.json"));
    Files.writeString(
        folder.resolve("bought.json"),
        text.replace("\"salt_pct\": 3, \"origin\": \"recovered\"", "\"origin\": \"bought\"")
            .replaceFirst("(?s)\"weighings\": \\[.*?\\],\\n", "")
            .replace("\"poured_at\": \"2026-04-11T10:00\",", ""));
    assertThat(terminal.run("sheet", "bought.json", "--labels", "-")).as(terminal.err()).isZero();

    Document page = Jsoup.parse(terminal.out());
    assertThat(page.select(".caution")).isEmpty();
    assertThat(page.select(".label").first().text())
        .contains("peelable after", "Not food.")
        .doesNotContain("2026");
  }

  @Test
  void escapesANameThatIsMarkup() throws IOException {
    String text = Files.readString(folder.resolve("4-blend.json"));
    Files.writeString(
        folder.resolve("x.json"), text.replace("Potato and tapioca", "<script>alert(1)</script>"));
    terminal.run("sheet", "x.json", "--labels", "-");

    assertThat(terminal.out()).contains("&lt;script&gt;").doesNotContain("<script>");
  }

  @Test
  void needsAPlaceToWriteAndOnlyOneResultOnStandardOutput() {
    assertThat(terminal.run("sheet", "4-blend.json")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("sheet needs somewhere to write");
    assertThat(terminal.run("sheet", "4-blend.json", "--out", "-", "--labels", "-"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("--out - beside --labels - given, allowed one result");
  }

  @Test
  void printsTheOthersWhereOneFileHasAFault() throws IOException {
    Files.writeString(folder.resolve("bad.json"), "{\"recipe\": 3}");

    assertThat(terminal.run("sheet", ".", "--labels", "labels.html"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("bad.json");
    assertThat(folder.resolve("labels.html")).exists();
  }

  @Test
  void planPrintsLabelsToo() throws IOException {
    int code =
        terminal.run(
            "plan",
            "--glycerol",
            "100g",
            "--starch",
            "potato",
            "--plates",
            "2x300x200mm glass",
            "--room",
            "20C,50%",
            "--origin",
            "bought",
            "--labels",
            "labels.html");

    assertThat(code).as(terminal.err()).isZero();
    assertThat(terminal.out()).contains("Labels to print: labels.html.");
    assertThat(Jsoup.parse(Files.readString(folder.resolve("labels.html"))).select(".label"))
        .hasSizeGreaterThanOrEqualTo(2);
  }
}
