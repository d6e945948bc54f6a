package starchfilm.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens an address in the browser the user has, if the system knows one. */
final class Browser {
  private Browser() {}

  /**
   * Opens an address.
   *
   * @param address an address of ours
   * @return false where there is no screen or nothing to open it with
   */
  static boolean open(String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.startsWith("windows")) {
      return started(List.of("rundll32", "url.dll,FileProtocolHandler", address));
    }
    if (system.startsWith("mac")) {
      return started(List.of("open", address));
    }
    boolean screen = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
    return screen && started(List.of("xdg-open", address));
  }

  private static boolean started(List<String> words) {
    try {
      new ProcessBuilder(words)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
