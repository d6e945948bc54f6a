package starchfilm.web;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * Gives tests a window of a real browser, one and the same for the whole test run.
 *
 * <p>Where no browser is installed the tests are skipped and say so; on the build machine (CI=true)
 * that is a failure, since {@code .ci/run} installs one.
 */
final class Chrome implements BeforeAllCallback, ParameterResolver {
  private static final Path BINARY = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  /** Marks a window whose pages run no script. */
  @java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy.RUNTIME)
  @java.lang.annotation.Target(java.lang.annotation.ElementType.PARAMETER)
  @interface WithoutScript {}

  /**
   * A running browser.
   *
   * @param window its window
   * @param driver what drives it
   * @param profile its folder
   */
  record Shared(Window window, ChromeDriver driver, Path profile) implements AutoCloseable {
    @Override
    public void close() {
      driver.quit();
      deleteAll(profile.toFile());
    }
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    boolean there = Files.isExecutable(BINARY) && Files.isExecutable(DRIVER);
    if ("true".equals(System.getenv("CI"))) {
      assertTrue(there, "the build machine has no Chromium; .ci/run installs it");
    }
    assumeTrue(there, "no Chromium here, so the pages were not tried in a browser");
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Window.class;
  }

  @Override
  public Window resolveParameter(ParameterContext parameter, ExtensionContext context) {
    Window window =
        context
            .getRoot()
            .getStore(ExtensionContext.Namespace.create(Chrome.class))
            .getOrComputeIfAbsent("browser", key -> open(), Shared.class)
            .window();
    window.reset();
    window.script(!parameter.isAnnotated(WithoutScript.class));
    return window;
  }

  /** Starts a browser. */
  static Shared open() {
    Path profile;
    try {
      profile = Files.createTempDirectory("starchfilm-browser-");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BINARY.toFile());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--force-prefers-reduced-motion",
        "--lang=en-GB",
        "--user-data-dir=" + profile);
    ChromeDriver driver =
        new ChromeDriver(
            new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build(),
            options);
    return new Shared(new Window(driver), driver, profile);
  }

  static void deleteAll(File file) {
    File[] inside = file.listFiles();
    if (inside != null) {
      for (File one : inside) {
        deleteAll(one);
      }
    }
    // A profile that the browser still holds is left to the system's temporary folder.
    file.delete();
  }
}
