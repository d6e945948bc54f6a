package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Keys;
import starchfilm.web.Served.Content;

/** Every journey works without a mouse, on a phone without script, and bears hostile text. */
@ExtendWith(Chrome.class)
class JourneysTest {
  private static final String HOSTILE =
      "</title></script>\"'><img src=x onerror=\"document.title='owned'\">${7*191}[[${7*191}]]__${7*191}__";

  private RunningSite site;

  @BeforeEach
  void start(@Served({Content.DRYING, Content.ENDED}) RunningSite served) {
    site = served;
  }

  @ParameterizedTest
  @EnumSource(Journey.class)
  void needsNoMouse(Journey journey, Window window) {
    window.open(site, journey.path);
    for (String fold : journey.folds) {
      window.tabTo(fold);
      window.press(Keys.ENTER);
    }
    for (Journey.Typed typed : journey.fields) {
      window.tabTo(typed.label());
      window.press(Keys.chord(Keys.CONTROL, "a"), typed.text());
    }
    window.tabTo(journey.button);
    window.press(Keys.ENTER);

    window.awaitText(journey.reached);
  }

  @ParameterizedTest
  @EnumSource(Journey.class)
  void needsNoScriptOnAPhone(Journey journey, @Chrome.WithoutScript Window window) {
    window.onPhone();
    travel(window, journey, "");

    window.awaitText(journey.reached);
    window.checks().assertFits();
  }

  @ParameterizedTest
  @EnumSource(Journey.class)
  void showsHostileTextAsText(Journey journey, Window window) {
    travel(window, journey, HOSTILE);

    assertThat(window.title()).isNotEqualTo("owned");
    assertThat(window.findAll("img[src=x]")).isEmpty();
    assertThat(window.text()).doesNotContain("1337").doesNotContain("The program itself failed");
    window.checks().assertAccessible();
    window.onPhone();
    window.checks().assertFits();
  }

  /** As a finger or a mouse goes through it; with a text instead of every other, if given. */
  private void travel(Window window, Journey journey, String instead) {
    window.open(site, journey.path);
    for (String fold : journey.folds) {
      window.fold(fold).click();
    }
    for (Journey.Typed typed : journey.fields) {
      window.write(typed.label(), instead.isEmpty() ? typed.text() : instead);
    }
    window.send(journey.button);
  }
}
