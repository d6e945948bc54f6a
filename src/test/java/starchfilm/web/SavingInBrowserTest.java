package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import starchfilm.web.Served.Content;

/** What people do around a save: press twice, go back, load again, edit in two tabs, unplug. */
@ExtendWith(Chrome.class)
class SavingInBrowserTest {
  private static final String EDIT = "/trial/edit?file=" + DryingTrial.FILE;
  private static final String TEXT = "/trial/text?file=" + DryingTrial.FILE;

  private Path file;
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.DRYING) RunningSite served) {
    site = served;
    file = site.folder().resolve(DryingTrial.FILE);
  }

  @Test
  void aButtonPressedTwiceNotesOnce(Window window) throws IOException {
    window.open(site, "/plates");
    window.write("Weight with plate", "690.5");
    window.pressTwice("Note");
    window.awaitText("Noted: ");

    assertThat(Files.readString(file).split("690.5", -1)).hasSize(2);
  }

  @Test
  void goingBackAndLoadingAgainSaveNothingTwice(Window window) throws IOException {
    window.open(site, EDIT);
    window.write("Relative humidity, %", "55");
    window.send("Save");
    window.awaitText("Saved.");
    String saved = Files.readString(file);
    window.reload();
    window.awaitHeading("On the shelf");

    window.back();
    window.awaitText("Into the pot");
    assertThat(Files.readString(file)).isEqualTo(saved).contains("\"rh_pct\": 55");
    assertThat(window.field("Relative humidity, %").getDomProperty("value")).isEqualTo("55");
    window.write("Relative humidity, %", "60");
    window.send("Save");
    window.awaitText("Saved.");
    assertThat(Files.readString(file)).contains("\"rh_pct\": 60");
  }

  @Test
  void theSecondOfTwoTabsSeesBothFields(Window window) throws IOException {
    window.open(site, EDIT);
    window.inAnotherTab(
        () -> {
          window.open(site, EDIT);
          window.write("Name", "attic");
          window.send("Save");
        });
    window.write("Name", "cellar");
    window.send("Save");

    window.awaitText("Somebody else changed this trial meanwhile");
    window.awaitText("In the file now: attic");
    window.checks().assertAccessible();
    assertThat(Files.readString(file)).contains("attic").doesNotContain("cellar");
    window.send("Save");
    window.awaitText("Saved.");
    assertThat(Files.readString(file)).contains("cellar");
  }

  @Test
  void theSecondOfTwoTabsSeesBothTexts(Window window) throws IOException {
    window.open(site, TEXT);
    window.inAnotherTab(
        () -> {
          window.open(site, TEXT);
          window.write("Its text", DryingTrial.textNamed("The first"));
          window.send("Save");
        });
    window.write("Its text", DryingTrial.textNamed("The second"));
    window.send("Save");

    window.awaitText("Somebody else changed this file meanwhile");
    window.checks().assertAccessible();
    window.picture("two-texts");
    assertThat(window.find(".theirs").getText()).contains("The first");
    assertThat(window.field("Your text").getDomProperty("value")).contains("The second");
    assertThat(Files.readString(file)).contains("The first");
    window.onPhone();
    window.checks().assertFits();
  }

  @Test
  void aFolderThatIsGoneIsSaidAndTakenUpAgain(Window window) throws IOException {
    window.open(site, "/plates");
    window.write("Weight with plate", "690.5");
    Path away = Files.move(site.folder(), site.folder().resolveSibling("away"));
    window.send("Note");
    window.awaitText("folder of the trials no longer exists");
    window.checks().assertAccessible();
    Files.move(away, site.folder());

    window.back();
    window.write("Weight with plate", "690.5");
    window.send("Note");
    window.awaitText("Noted: ");
    assertThat(Files.readString(file)).contains("690.5");
  }

  @Test
  void whoStopsItIsToldThatAllIsSaved(Window window) throws InterruptedException {
    window.open(site, "/trials");
    window.fold("Stop starchfilm").click();
    window.send("Stop it now");
    window.awaitHeading("starchfilm has stopped");
    window.checks().assertAccessible();
    window.picture("stopped");

    site.site().awaitStop();
  }
}
