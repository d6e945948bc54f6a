package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import starchfilm.web.Served.Content;

@ExtendWith(Chrome.class)
class PlatesInBrowserTest {
  @Test
  void weighsInTwoTapsOnAPhone(Window window, @Served(Content.DRYING) RunningSite site)
      throws IOException {
    Path file = site.folder().resolve(DryingTrial.FILE);
    window.onPhone();
    window.open(site, "/");
    assertThat(window.heading()).isEqualTo("1 plate needs you.");
    window.link("Weigh").click();
    window.awaitText("drying for 26 hours");
    window.checks().assertFits();

    window.onPhone();
    window.field("Weight with plate").click();
    window.press("690.5");
    window.button("Note").click();
    window.awaitText("Noted: ");
    assertThat(Files.readString(file)).contains("690.5");
  }

  @Test
  void eightPlatesAreEightNumbersAndEightEnterKeys(
      Window window, @Served(Content.DRYING) RunningSite site) throws IOException {
    Path file = site.folder().resolve(DryingTrial.FILE);
    Files.writeString(
        file,
        Files.readString(file)
            .replace("\"poured_g\": 150", "\"plates\": 8, \"poured_g\": 25")
            .replace("\"tare_g\": 598", "\"tare_g\": 100"));
    window.onPhone();
    window.open(site, "/plates/all");
    window.field("Plate 1 weighs").click();
    for (int plate = 1; plate <= 8; plate++) {
      String grams = 110 + plate + ".5";
      window.press(grams, Keys.ENTER);
      window.awaitText("weighed " + grams + " g");
      assertThat(window.find(".plate .said").getText()).contains("Noted: ");
      if (plate < 8) {
        Window.await(window::focused, "Plate " + (plate + 1) + " weighs");
      }
      window.awaitGone(".due > [role=status]");
      window.checks().assertInSight(".plate .said");
      assertThat(window.seesFocus()).as("focus in view after plate %d", plate).isTrue();
    }
    assertThat(Files.readString(file).split("mass_g", -1)).hasSize(8 + 4);
  }

  @Test
  void needsNoScript(
      @Chrome.WithoutScript Window window, @Served(Content.DRYING) RunningSite site) {
    window.open(site, "/plates/all");
    assertThat(window.text()).contains("drying for 26 hours");
    window.write("Weight with plate", "heavy");
    window.button("Note").click();
    window.awaitText("\"heavy\" given, allowed a number in g");
    assertThat(window.field("Weight with plate").getDomProperty("value")).isEqualTo("heavy");
  }

  @Test
  void notesEverythingOnATrialsPage(Window window, @Served RunningSite site) throws IOException {
    Path file = DryingTrial.in(site.folder(), "<script>alert(1)</script> &amp; \\\"film\\\"");
    window.open(site, "/trial?file=" + DryingTrial.FILE);
    assertThat(window.heading()).isEqualTo("<script>alert(1)</script> &amp; \"film\"");
    window.awaitText("Weigh out");

    window.fold("Something else").click();
    window.click("summary[data-note=fault]");
    window.write("In your words", "<i>soft</i>");
    window.button("Note the fault").click();
    window.awaitText("Noted: ");
    window.awaitText("<i>soft</i>");
    assertThat(window.findAll("main i i, main q i")).isEmpty();

    Path picture =
        Files.write(
            site.folder().resolve("p.png"),
            java.util.Base64.getDecoder()
                .decode(
                    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="));
    window.fold("Something else").click();
    window.click("summary[data-note=photo]");
    window.field("Choose pictures").sendKeys(picture.toString());
    window.button("Keep the photos").click();
    window.awaitText("Noted: 1 photo.");
    assertThat(window.findAll(".photos img")).hasSize(1);
    assertThat(Files.readString(file)).contains("\"kind\": \"cracked\"").doesNotContain("null");

    window.back();
    window.back();
    window.click("summary[data-note=rated]");
    window.click("input[name=rating][value='4']");
    window.button("Note the rating").click();
    Window.await(Window.content(file), "\"rating\": 4");
    assertThat(Files.readString(file)).contains("photos");
  }
}
