package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import starchfilm.web.Served.Content;

@ExtendWith(Chrome.class)
class PlanInBrowserTest {
  @Test
  void movesASliderByKeyAndKeepsTheRecipe(Window window, @Served RunningSite site) {
    window.open(site, "/plan");
    window.awaitText("mm wet");
    String before = window.find(".moved").getText();

    window.tabTo("Wet thickness");
    window.press(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    String moved =
        String.format(
            java.util.Locale.ROOT,
            "%.1f mm wet",
            Double.parseDouble(before.substring(0, before.indexOf(' '))) + 0.4);
    window.awaitText(moved);

    window.write("Name", "Moved");
    window.button("Save").click();
    window.awaitHeading("Moved");
    assertThat(site.folder().resolve("moved.json")).exists();
  }

  @Test
  void needsNoScriptAndFitsAPhone(
      @Chrome.WithoutScript Window window, @Served(Content.GARDEN) RunningSite site)
      throws IOException {
    Files.writeString(
        site.folder().resolve("long.json"),
        Files.readString(site.folder().resolve("4-blend.json"))
            .replace("\"Potato and tapioca\"", "\"" + "Potato and tapioca ".repeat(5) + "\""));
    window.onPhone();
    window.open(site, "/plan?base=4-blend.json");
    window.checks().assertFits();
    window.field("Wet thickness").sendKeys(Keys.ARROW_RIGHT);
    window.button("Forecast it").click();
    window.awaitText("2.6 mm wet");
  }
}
