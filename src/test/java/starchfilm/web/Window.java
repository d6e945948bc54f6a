package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** A browser's window, and what a person does with it. */
final class Window {
  private static final Path PICTURES = Path.of("target", "screenshots");
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final int DESK_PX = 1280;
  private static final int PHONE_PX = 360;

  private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

  private final ChromeDriver driver;
  private final PageChecks checks;

  Window(ChromeDriver driver) {
    this.driver = driver;
    this.checks = new PageChecks(driver);
  }

  void reset() {
    driver.manage().deleteAllCookies();
    onDesk();
    inLight();
  }

  /** Whether the pages that are opened from now on run their script. */
  void script(boolean runs) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !runs));
  }

  void open(RunningSite site, String path) {
    driver.get(site.uri(path).toString());
  }

  void open(Path page) {
    driver.get(page.toUri().toString());
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

  /** Presses a button that sends a form, and waits for the page that answers. */
  void send(String button) {
    WebElement page = find("html");
    button(button).click();
    await(() -> isGone(page) ? "another page" : path(), "another page");
  }

  /** Presses a button of a page that renews itself, once a press meets the page that is there. */
  void sendFromAChangingPage(String button) {
    await(
        () -> {
          button(button).click();
          return "pressed";
        },
        "pressed");
  }

  /** Presses a button twice, faster than any answer. */
  void pressTwice(String button) {
    new Actions(driver).doubleClick(button(button)).perform();
  }

  private static boolean isGone(WebElement element) {
    try {
      element.isEnabled();
      return false;
    } catch (WebDriverException e) {
      return true;
    }
  }

  /** Clicks what may lie outside the window. */
  void click(String css) {
    inView(find(css)).click();
  }

  /** A fold by its words. */
  WebElement fold(String words) {
    return inView(
        driver.findElement(By.xpath("//summary[contains(normalize-space(), '" + words + "')]")));
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
    return String.valueOf(driver.executeScript("return document.body.innerText"))
        .replace('\u00A0', ' ');
  }

  String title() {
    return driver.getTitle();
  }

  String path() {
    String address = driver.getCurrentUrl();
    return address.substring(address.indexOf('/', "http://".length()));
  }

  /** Does something in a tab of its own and comes back. */
  void inAnotherTab(Runnable work) {
    String here = driver.getWindowHandle();
    driver.switchTo().newWindow(WindowType.TAB);
    work.run();
    driver.close();
    driver.switchTo().window(here);
  }

  void reload() {
    driver.navigate().refresh();
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

  /** Waits until nothing of this kind is on the page. */
  void awaitGone(String css) {
    await(() -> findAll(css).isEmpty() ? "gone" : css, "gone");
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
      new Actions(driver).sendKeys(Keys.TAB).perform();
      if (focused().contains(words)) {
        return;
      }
    }
    throw new AssertionError("no key press reached: " + words);
  }

  /** What has the focus: its words, or the label and name of a field. */
  String focused() {
    return String.valueOf(
        driver.executeScript(
            """
            const e = document.activeElement;
            return [e.innerText, e.getAttribute('aria-label'), e.name,
              ...[...(e.labels || [])].map(label => label.innerText)].join(' ');
            """));
  }

  /** Whether what has the focus is on the screen. */
  boolean seesFocus() {
    return (boolean)
        driver.executeScript(
            "const at = document.activeElement.getBoundingClientRect();"
                + "return at.bottom > 0 && at.top < innerHeight;");
  }

  /** What is asked of any page. */
  PageChecks checks() {
    return checks;
  }

  /**
   * Saves the whole page for looking at where {@code -Dstarchfilm.pictures=true} is given: on a
   * desk and a phone, light, dark, in grey, and as it prints.
   */
  void picture(String name) {
    if (Boolean.getBoolean("starchfilm.pictures")) {
      save(name + "-desk-light");
      inDark();
      save(name + "-desk-dark");
      onPhone();
      save(name + "-phone-dark");
      inLight();
      save(name + "-phone-light");
      onDesk();
      seeing("achromatopsia");
      save(name + "-desk-grey");
      seeing("none");
      print(name + "-print");
      onDesk();
      inLight();
    }
  }

  /** What a desk shows of the page, this high. */
  BufferedImage view(int heightPx) throws IOException {
    size(DESK_PX, heightPx, false);
    driver.executeScript("document.documentElement.style.scrollbarWidth = 'none'");
    byte[] png = driver.getScreenshotAs(OutputType.BYTES);
    onDesk();
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private void seeing(String deficiency) {
    driver.executeCdpCommand("Emulation.setEmulatedVisionDeficiency", Map.of("type", deficiency));
  }

  private void print(String name) {
    write(
        name + ".pdf",
        driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true)).get("data"));
  }

  /** How many pages it prints on. */
  int printedPages() {
    Object pdf =
        driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true)).get("data");
    String text =
        new String(Base64.getDecoder().decode(String.valueOf(pdf)), StandardCharsets.ISO_8859_1);
    return (int) PAGE.matcher(text).results().count();
  }

  private void save(String name) {
    Object shot =
        driver
            .executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true))
            .get("data");
    write(name + ".png", shot);
  }

  private static void write(String name, Object base64) {
    try {
      Files.createDirectories(PICTURES);
      Files.write(PICTURES.resolve(name), Base64.getDecoder().decode(String.valueOf(base64)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
