package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.Rectangle;
import org.openqa.selenium.WebElement;
import starchfilm.web.Served.Content;

@ExtendWith(Chrome.class)
class NotebookInBrowserTest {
  @Test
  void listsTrialsAndComparesThem(Window window, @Served(Content.GARDEN) RunningSite site) {
    window.open(site, "/trials");
    assertThat(window.heading()).isEqualTo("Trials");
    assertThat(window.findAll(".trials > li")).hasSize(6);

    window.link("Compare").click();
    window.awaitHeading("Five trials, side by side");
    window.link("Choose other trials").click();
    window.awaitHeading("Compare");
    window.link("none").click();
    window.awaitHeading("Compare");
    window.findAll("input[type=checkbox]").stream().limit(2).forEach(box -> box.click());
    window.send("Compare");
    window.awaitText("Two trials, side by side");
    window.link("Choose other trials").click();
    window.awaitHeading("Compare");
  }

  @Test
  void findsTrialsAsTheirNameIsTyped(Window window, @Served(Content.GARDEN) RunningSite site) {
    window.open(site, "/trials");
    window.write("Find", "glycerol");
    window.awaitText("2 of 6 trials");
    assertThat(window.findAll(".trials > li")).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "/trial/forecast?file=4-blend.json, false",
    "/trial/forecast?file=4-blend.json, true",
    "/compare, false",
    "/compare, true"
  })
  void wordsInPicturesGrowWithTheText(
      String path, boolean phone, Window window, @Served(Content.GARDEN) RunningSite site) {
    if (phone) {
      window.onPhone();
    }
    window.open(site, path);
    window.awaitText("peelable");
    List<Integer> heights = heightsInPictures(window);

    assertThat(window.checks().pixelsBeyondAtDoubleText()).isZero();
    List<Integer> doubled = heightsInPictures(window);
    assertThat(doubled).isNotEmpty().hasSameSizeAs(heights);
    for (int i = 0; i < doubled.size(); i++) {
      assertThat(doubled.get(i)).as("word %d", i).isGreaterThan(heights.get(i) * 4 / 3);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void wordsInAPictureStayClearOfItsMarksItsEdgeAndOneAnother(
      boolean phone, Window window, @Served(Content.GARDEN) RunningSite site) {
    if (phone) {
      window.onPhone();
    }
    window.open(site, "/trial/forecast?file=4-blend.json");
    List<Rectangle> words = wordsInPictures(window);
    List<Rectangle> clear = new ArrayList<>(words);
    window.findAll(".curve .lane path.mark").forEach(mark -> clear.add(mark.getRect()));

    int left = window.find(".curve").getRect().x;
    assertThat(words).hasSizeGreaterThan(15).allMatch(word -> word.x >= left - 1);
    for (int i = 0; i < words.size(); i++) {
      for (int j = i + 1; j < clear.size(); j++) {
        assertThat(overlap(words.get(i), clear.get(j))).as("%d on %d", i, j).isFalse();
      }
    }
  }

  /** By more than the pixels between the ink of a word and its box. */
  private static boolean overlap(Rectangle a, Rectangle b) {
    return Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 1
        && Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 3;
  }

  private static List<Integer> heightsInPictures(Window window) {
    return wordsInPictures(window).stream().map(word -> word.height).toList();
  }

  private static List<Rectangle> wordsInPictures(Window window) {
    return window.findAll(".curve text").stream()
        .filter(word -> word.isDisplayed() && !word.getText().isEmpty())
        .map(WebElement::getRect)
        .toList();
  }

  @Test
  void needsNoMouse(Window window, @Served(Content.GARDEN) RunningSite site) {
    window.open(site, "/trials");
    window.press(Keys.TAB);
    assertThat(window.focused()).contains("To the page");
    window.tabTo("Compare");
    window.press(Keys.ENTER);
    window.awaitHeading("Five trials, side by side");
    window.tabTo("Choose other trials");
    window.press(Keys.ENTER);
    window.awaitHeading("Compare");
    window.tabTo("Compare those ticked");
    window.press(Keys.ENTER);
    window.awaitHeading("Five trials, side by side");
  }

  @Test
  void nothingTickedIsSaidAtTheTicksWithTheFocusThere(
      Window window, @Served(Content.GARDEN) RunningSite site) {
    window.open(site, "/compare/choice?tick=none");
    window.tabTo("Compare those ticked");
    window.press(Keys.ENTER);
    window.awaitText("No trial is ticked. Tick at least one.");
    window.awaitHeading("Compare");
    window.press(Keys.SPACE);
    assertThat(window.findAll(".ticked li:first-child input:checked")).hasSize(1);
    assertThat(window.findAll("input:checked")).hasSize(1);
  }

  @Test
  void startsAndEditsATrialInAnEmptyNotebook(Window window, @Served RunningSite site)
      throws IOException {
    window.open(site, "/");
    window.button("Start with this recipe").click();
    window.awaitText("Saved as a new trial");
    window.link("Edit the trial").click();
    window.awaitText("Into the pot");
    window.write("Relative humidity, %", "40 to 55");
    window.button("Save").click();
    window.awaitText("Saved.");
    assertThat(Files.readString(site.folder().resolve("first-film.json")))
        .contains("{\"from\": 40, \"to\": 55}");
  }

  @Test
  void showsHostileTextAsText(Window window, @Served RunningSite site) throws IOException {
    String name = "<img src=x onerror=document.title='owned'>${7*7}[[${7*7}]]";
    Files.writeString(
        site.folder().resolve("a&b'\\u0022<i>.json"),
        Files.readString(Path.of("formulations/starter-soft-wrap.json"))
            .replaceFirst(
                "\"name\": \"[^\"]*\"",
                "\"name\": \"" + java.util.regex.Matcher.quoteReplacement(name) + "\""));
    window.open(site, "/trials");
    assertThat(window.find(".trials .name").getText()).contains(name);
    window.open(site, "/compare/choice");
    assertThat(window.text()).contains(name);
    assertThat(window.findAll("main img")).isEmpty();
  }
}
