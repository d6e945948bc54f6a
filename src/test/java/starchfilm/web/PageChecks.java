package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.providers.EmbeddedResourceAxeProvider;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import javax.naming.OperationNotSupportedException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** What is asked of any page in a window, whatever it is for. */
final class PageChecks {
  /** WCAG 2.2, A and AA, and good practice; the target sizes of 2.2 are left out unless named. */
  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  /** Only what is wrong is brought back, which is most of the time saved. */
  private static final String RUN =
      """
      const done = arguments[arguments.length - 1];
      if (typeof axe === 'undefined') return done(null);
      const only = {type: arguments[0], values: arguments[1]};
      axe.run({runOnly: only, resultTypes: ['violations'], preload: false}).then(
        found => done(found.violations.map(rule => rule.impact + ' ' + rule.id + ': ' + rule.help
          + rule.nodes.slice(0, 3).map(node => ' ' + node.html + ' ' + node.failureSummary))),
        failure => done(['axe failed: ' + failure]));
      """;

  private static final String SHOWN =
      """
      const shown = css => [...document.querySelectorAll(css)].filter(
        e => e.checkVisibility({visibilityProperty: true}) && e.getClientRects().length);
      const words = e => e.tagName.toLowerCase() + ' '
        + (e.innerText || e.getAttribute('aria-label') || e.labels?.[0]?.innerText || e.name || e.id);
      """;

  /** What is tapped to do something; a link within words may be as low as its line. */
  private static final String THUMB =
      SHOWN
          + """
          return shown('button, .button, select, textarea, summary, .places a, .ways a, '
              + '.trials .name a, .plate h2 a, .photos a, input:not([type=hidden])')
            .map(e => [e, /checkbox|radio/.test(e.type) ? e.closest('label') : e])
            .filter(([e, area]) => area.getBoundingClientRect().height < 43.5)
            .map(([e, area]) => words(e) + ': ' + area.getBoundingClientRect().height + ' px high');
          """;

  private static final String WATCH_THE_FOCUS =
      """
      window.walked = [];
      document.addEventListener('focusin', event => {
        const e = event.target;
        const box = e.getBoundingClientRect();
        const style = getComputedStyle(e);
        const over = document.elementFromPoint(
          Math.min(Math.max(box.x + box.width / 2, 1), innerWidth - 1),
          Math.min(Math.max(box.y + box.height / 2, 1), innerHeight - 1));
        walked.push({
          element: e,
          marked: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1,
          seen: box.bottom > 0 && box.top < innerHeight,
          free: (e.closest('label') ?? e).contains(over) || over?.contains(e)});
      });
      """;

  private static final String WHERE_IT_WAS =
      SHOWN
          + """
          const once = e => e.type === 'radio' && e.name ? 'radio ' + e.name : e;
          const reached = new Set(walked.map(step => once(step.element)));
          const missed = shown('a[href], button, input:not([type=hidden]), select, textarea, summary, '
              + '[tabindex="0"]')
            .filter(e => !reached.has(once(e)))
            .map(e => 'not reached: ' + words(e));
          const said = (what, test) => walked.filter(step => !step[test])
            .map(step => what + words(step.element));
          return [...missed, ...said('no mark of the focus: ', 'marked'),
            ...said('out of sight: ', 'seen'), ...said('covered: ', 'free')];
          """;

  private static final String HOW_MANY =
      SHOWN
          + "return shown('a[href], button, input, select, textarea, summary, [tabindex]').length"
          // A field for a date is several stops.
          + " + 8 * shown('input[type=datetime-local]').length;";

  private final ChromeDriver driver;

  PageChecks(ChromeDriver driver) {
    this.driver = driver;
  }

  /** How much wider the page is than its window. */
  int pixelsBeyond() {
    Number wide =
        (Number)
            driver.executeScript(
                "return Math.max(0, document.documentElement.scrollWidth - innerWidth)");
    return wide.intValue();
  }

  /** The same with text twice as large (WCAG 2.2, 1.4.4). */
  int pixelsBeyondAtDoubleText() {
    driver.executeScript(
        "const root = document.documentElement;"
            + "root.style.fontSize = 2 * parseFloat(getComputedStyle(root).fontSize) + 'px'");
    return pixelsBeyond();
  }

  /** An element comes to lie whole within the window, without scrolling. */
  void assertInSight(String css) {
    String where =
        """
        const box = document.querySelector(arguments[0]).getBoundingClientRect();
        return box.top >= 0 && box.bottom <= innerHeight && box.left >= 0
          ? 'in sight' : 'from ' + box.top + ' to ' + box.bottom + ' px';
        """;
    // A page that is just being replaced moves once more when its new part is laid out.
    Window.await(() -> String.valueOf(driver.executeScript(where, css)), "in sight");
  }

  void assertFits() {
    assertThat(pixelsBeyond()).as("pixels beyond the window").isZero();
  }

  /** What the accessibility rules of axe-core find, each with its impact and place. */
  List<?> violations() {
    return violations("tag", RULES);
  }

  void assertAccessible() {
    assertThat(violations()).isEmpty();
  }

  /** What they find that depends on the colours. */
  List<?> illegible() {
    return violations("rule", List.of("color-contrast"));
  }

  private List<?> violations(String type, List<String> values) {
    // The rules are long, and most pages are asked twice.
    Object found = driver.executeAsyncScript(RUN, type, values);
    // One script, so that a page that renews itself cannot lose the rules before they run.
    return (List<?>)
        (found == null ? driver.executeAsyncScript(rules() + ";\n" + RUN, type, values) : found);
  }

  private static String rules() {
    try {
      return new EmbeddedResourceAxeProvider().getScript();
    } catch (IOException | OperationNotSupportedException e) {
      throw new IllegalStateException("the rules are packed with their library", e);
    }
  }

  /** What a thumb would miss: lower than 44 pixels (WCAG 2.2, 2.5.5). */
  List<?> tooSmallForAThumb() {
    return (List<?>) driver.executeScript(THUMB);
  }

  /**
   * Walks through the whole page with the tabulator key.
   *
   * @return what was not reached, or not marked, out of sight or covered when it was
   */
  List<?> notReachedByKey() {
    driver.executeScript(WATCH_THE_FOCUS);
    int stops = ((Number) driver.executeScript(HOW_MANY)).intValue();
    new Actions(driver)
        .sendKeys(String.join("", Collections.nCopies(stops, Keys.TAB.toString())))
        .perform();
    return (List<?>) driver.executeScript(WHERE_IT_WAS);
  }
}
