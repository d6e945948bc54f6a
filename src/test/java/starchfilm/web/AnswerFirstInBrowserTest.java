package starchfilm.web;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.proof.OwnJava;
import starchfilm.web.Served.Content;

/** After each main button the answer is in sight and has the focus, on a desk and on a phone. */
@ExtendWith(Chrome.class)
class AnswerFirstInBrowserTest {
  @ParameterizedTest
  @CsvSource({"false,99.5", "true,99.5"})
  void theJarIsAnsweredInSight(
      boolean phone, String label, @Chrome.WithoutScript Window window, @Served RunningSite site) {
    open(window, site, "/jar", phone);
    window.write("What the jar holds", "250");
    window.field("The glycerol is").sendKeys("bought");
    window.write("Glycerol by the label", label);
    window.send("Work out what is in the jar");

    assertAnswered(window, "In the jar");
    assertThat(window.find(".asked summary").getText())
        .contains("250 g, about 99.5 %, bought, 99.5 % by the label change");
  }

  @ParameterizedTest
  @CsvSource({
    "false,10,What can be made",
    "true,10,What can be made",
    "false,0.01,No recipe meets every wish",
    "true,0.01,No recipe meets every wish"
  })
  void aPlanIsAnsweredInSight(
      boolean phone,
      String days,
      String heading,
      @Chrome.WithoutScript Window window,
      @Served RunningSite site) {
    open(window, site, "/plan/wishes", phone);
    window.write("Glycerol in the jar", "250");
    window.write("Ready by", days);
    window.send("Find recipes");

    assertAnswered(window, heading);
    window.fold("change").click();
    assertThat(window.field("Ready by").getDomProperty("value")).isEqualTo(days);
  }

  @ParameterizedTest
  @CsvSource({"false", "true"})
  void aRefusalIsInSight(
      boolean phone, @Chrome.WithoutScript Window window, @Served RunningSite site) {
    open(window, site, "/jar", phone);
    window.write("What the jar holds", "much");
    window.send("Work out what is in the jar");

    window.checks().assertInSight(".refusal");
    assertThat(window.focused()).contains("What the jar holds");
    assertThat(window.field("Hydrometer").isDisplayed()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"bought,Glycerol by the label", "unknown,Hydrometer"})
  void aJarWithNothingToGoByIsAskedForIt(
      String origin, String asked, @Chrome.WithoutScript Window window, @Served RunningSite site) {
    open(window, site, "/jar", false);
    window.write("What the jar holds", "250");
    window.field("The glycerol is").sendKeys(origin);
    window.send("Work out what is in the jar");

    assertThat(window.focused()).contains(asked);
    window.checks().assertInSight(".faulty .refusal");
  }

  @ParameterizedTest
  @CsvSource({
    "false,/jar,A bottle weighed three times,The bottle empty,52,Work out what is in the jar,brimful of water",
    "true,/plan/wishes,All else,Relative humidity,abc,Find recipes,Relative humidity",
    "false,/plan/wishes,All else,One thing varied,abc,Find recipes,One thing varied",
    "true,/plan/thickness,,Dry by,soon,How thick?,Dry by"
  })
  void aRefusalStandsAtItsFieldInTheOpenedFold(
      boolean phone,
      String path,
      String fold,
      String field,
      String written,
      String button,
      String faulty,
      @Chrome.WithoutScript Window window,
      @Served RunningSite site) {
    open(window, site, path, phone);
    if (fold != null) {
      window.write(path.equals("/jar") ? "What the jar holds" : "Glycerol in the jar", "250");
      window.fold(fold).click();
    }
    window.write(field, written);
    window.send(button);

    assertThat(window.focused()).contains(faulty);
    window.checks().assertInSight(".faulty .refusal");
  }

  @ParameterizedTest
  @CsvSource({"false", "true"})
  void aRefusedNoteHasTheFocusAndItsReasonInSight(
      boolean phone, @Chrome.WithoutScript Window window, @Served RunningSite site)
      throws IOException {
    DryingTrial.in(site.folder());
    open(window, site, "/trial?file=" + DryingTrial.FILE, phone);
    window.write("The scale shows", "heavy");
    window.send("Note the weighing");

    window.checks().assertInSight("#note-why");
    assertThat(window.focused()).contains("The scale shows");
    assertThat(window.field("The scale shows").getDomProperty("value")).isEqualTo("heavy");
  }

  @ParameterizedTest
  @CsvSource({"false", "true"})
  void aComparisonIsAnsweredInSight(
      boolean phone, Window window, @Served(Content.GARDEN) RunningSite site) {
    open(window, site, "/compare", phone);
    window.awaitText("side by side");

    window.checks().assertInSight("h1");
  }

  @ParameterizedTest
  @CsvSource({"1,4", "2,5"})
  void upToTwelveTrialsInAFileAreThreeScreensBeforeTheDetails(
      int gardens, int sheets, Window window, @TempDir Path folder) throws Exception {
    for (int garden = 1; garden <= gardens; garden++) {
      try (Stream<Path> files = Files.list(Path.of("formulations/garden"))) {
        for (Path file : files.toList()) {
          String name = String.valueOf(file.getFileName());
          boolean trial = Character.isDigit(name.charAt(0));
          Files.copy(file, folder.resolve(trial ? garden + name : name), REPLACE_EXISTING);
        }
      }
    }
    Path page = folder.resolve("page.html");
    Process compare =
        OwnJava.of("starchfilm.cli.Main", "compare", folder.toString(), "--out", page.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(compare.waitFor()).isZero();

    window.open(page);
    assertThat(window.findAll("#one-by-one ~ details")).hasSize(6 * gardens);
    assertThat(window.find("#one-by-one").getLocation().getY()).isLessThanOrEqualTo(3 * 900);
    assertThat(window.printedPages()).isLessThanOrEqualTo(sheets);
  }

  private static void open(Window window, RunningSite site, String path, boolean phone) {
    if (phone) {
      window.onPhone();
    }
    window.open(site, path);
  }

  private static void assertAnswered(Window window, String heading) {
    window.awaitText(heading);
    window.checks().assertInSight("#answer");
    assertThat(window.find("#answer").getText()).isEqualTo(heading);
    assertThat(window.focused().strip()).startsWith(heading);
  }
}
