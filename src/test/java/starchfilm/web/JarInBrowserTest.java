package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

@ExtendWith(Chrome.class)
class JarInBrowserTest {
  @Test
  void goesFromAnEmptyFolderToARecipeInTheNotebook(Window window, @Served RunningSite site) {
    window.open(site, "/jar");
    window.write("What the jar holds", "250");
    window.field("The glycerol is").sendKeys("bought");
    window.write("Glycerol by the label", "99.5");
    window.button("Work out what is in the jar").click();
    window.awaitText("In the jar");

    window.link("Plan with this jar").click();
    window.awaitHeading("The plan");
    assertThat(window.field("Glycerol in the jar").getDomProperty("value")).isEqualTo("250");
    window.button("Find recipes").click();
    window.awaitText("What can be made");
    window.button("Save recipe 1").click();
    window.awaitText("Saved as a new trial");
    window.link("Compare").click();
    window.awaitHeading("Compare");
    window.button("Compare").click();
    window.awaitText("One trial");
  }

  @Test
  void needsNeitherMouseNorScript(@Chrome.WithoutScript Window window, @Served RunningSite site) {
    window.open(site, "/jar");
    window.tabTo("What the jar holds");
    window.press("<b>5");
    window.tabTo("unknown");
    window.press("bought");
    window.tabTo("Glycerol by the label");
    window.press("99", Keys.ENTER);
    window.awaitText("What the jar holds: \"<b>5\" given");
    assertThat(window.findAll("main p b")).isEmpty();
  }
}
