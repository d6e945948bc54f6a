package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

@ExtendWith(Chrome.class)
class PlanInBrowserTest {
  @TempDir private Path folder;

  @Test
  void movesASliderByKeyAndKeepsTheRecipe(Window window) throws IOException {
    try (RunningSite site = RunningSite.over(folder)) {
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

      window.write("What you call it", "Moved");
      window.button("Put it in the notebook").click();
      window.awaitHeading("Moved");
      assertThat(folder.resolve("moved.json")).exists();
    }
  }

  @Test
  void needsNoScriptAndFitsAPhone(@Chrome.WithoutScript Window window) throws IOException {
    try (RunningSite site = RunningSite.overGarden(folder)) {
      window.onPhone();
      window.open(site, "/plan?base=4-blend.json");
      window.checks().assertFits();
      window.field("Wet thickness").sendKeys(Keys.ARROW_RIGHT);
      window.button("Forecast it").click();
      window.awaitText("2.6 mm wet");
    }
  }
}
