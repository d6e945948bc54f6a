package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** A browser's window, and what a person does with it. */
final class Window {
  private static final Path PICTURES = Path.of("target", "screenshots");
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final int DESK_PX = 1280;
  private static final int PHONE_PX = 400;

  private final ChromeDriver driver;

  Window(ChromeDriver driver) {
    this.driver = driver;
  }

  void reset() {
    driver.manage().deleteAllCookies();
    onDesk();
    inLight();
    driver.get("about:blank");
  }

  void open(RunningSite site, String path) {
    driver.get(site.uri(path).toString());
  }

  void onDesk() {
    size(DESK_PX, 900, false);
  }

  void onPhone() {
    size(PHONE_PX, 800, true);
  }

  void inLight() {
    scheme("light");
  }

  void inDark() {
    scheme("dark");
  }

  private void size(int width, int height, boolean mobile) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", mobile));
  }

  private void scheme(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  WebElement find(String css) {
    return driver.findElement(By.cssSelector(css));
  }

  List<WebElement> findAll(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  WebElement link(String text) {
    return inView(driver.findElement(By.partialLinkText(text)));
  }

  WebElement button(String text) {
    return inView(
        driver.findElement(By.xpath("//button[contains(normalize-space(), '" + text + "')]")));
  }

  /** Clicks what may lie outside the window. */
  void click(String css) {
    inView(find(css)).click();
  }

  /** What a file holds, to be waited for. */
  static Supplier<String> content(Path file) {
    return () -> {
      try {
        return Files.readString(file);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }

  private WebElement inView(WebElement element) {
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
    return element;
  }

  /** A field by the words of its label. */
  WebElement field(String label) {
    WebElement words =
        driver.findElement(By.xpath("//label[contains(normalize-space(), '" + label + "')]"));
    String of = words.getDomAttribute("for");
    return inView(
        of == null
            ? words.findElement(By.cssSelector("input, select, textarea"))
            : driver.findElement(By.id(of)));
  }

  void write(String label, String text) {
    WebElement field = field(label);
    field.clear();
    field.sendKeys(text);
  }

  String heading() {
    return find("h1").getText();
  }

  String text() {
    return find("body").getText();
  }

  String path() {
    String address = driver.getCurrentUrl();
    return address.substring(address.indexOf('/', "http://".length()));
  }

  void back() {
    driver.navigate().back();
  }

  /** Waits until a page of this heading is there. */
  void awaitHeading(String heading) {
    await(this::heading, heading);
  }

  /** Waits until the page shows a text. */
  void awaitText(String text) {
    await(this::text, text);
  }

  /** Waits until something holds a text. */
  static void await(Supplier<String> shown, String text) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    String last = "";
    while (System.nanoTime() < end) {
      try {
        last = shown.get();
        if (last.contains(text)) {
          return;
        }
        Thread.sleep(50);
      } catch (WebDriverException e) {
        // The page is just being replaced.
        last = String.valueOf(e.getMessage());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(e);
      }
    }
    assertThat(last).contains(text);
  }

  /** Presses keys as if no mouse were there. */
  void press(CharSequence... keys) {
    driver.switchTo().activeElement().sendKeys(keys);
  }

  /** Goes on with the tabulator key until the element with these words has the focus. */
  void tabTo(String words) {
    for (int i = 0; i < 120; i++) {
      press(Keys.TAB);
      if (focused().contains(words)) {
        return;
      }
    }
    throw new AssertionError("no key press reached: " + words);
  }

  /** What has the focus: its words, or the label and name of a field. */
  String focused() {
    WebElement active = driver.switchTo().activeElement();
    return active.getText()
        + " "
        + active.getAccessibleName()
        + " "
        + active.getDomAttribute("name");
  }

  /** Nothing is wider than the window. */
  void assertFits() {
    Number wide =
        (Number) driver.executeScript("return document.documentElement.scrollWidth - innerWidth");
    assertThat(wide.intValue()).as("pixels beyond the window").isLessThanOrEqualTo(0);
  }

  /** Runs the accessibility rules of axe-core (WCAG 2.2 A and AA, and good practice). */
  void assertAccessible() {
    Results found = new AxeBuilder().analyze(driver);
    assertThat(
            found.getViolations().stream().map(Window::sentence).collect(Collectors.joining("\n")))
        .isEmpty();
  }

  private static String sentence(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + " "
        + rule.getNodes().stream().map(node -> node.getHtml()).limit(3).toList();
  }

  /** Saves the whole page, narrow and wide, light and dark, for looking at. */
  void picture(String name) {
    for (String scheme : List.of("light", "dark")) {
      scheme(scheme);
      onDesk();
      save(name + "-desk-" + scheme);
      onPhone();
      save(name + "-phone-" + scheme);
    }
    onDesk();
    inLight();
  }

  private void save(String name) {
    Object shot =
        driver
            .executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true))
            .get("data");
    try {
      Files.createDirectories(PICTURES);
      Files.write(
          PICTURES.resolve(name + ".png"), Base64.getDecoder().decode(String.valueOf(shot)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
