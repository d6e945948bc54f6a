package starchfilm.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Opens an address in the browser the user has, if the system knows one. */
final class Browser {
  private Browser() {}

  /**
   * Opens an address.
   *
   * @return false where there is no screen or nothing to open it with
   */
  static boolean open(String address) {
    return words(System.getProperty("os.name", ""), System.getenv(), address)
        .map(Browser::started)
        .orElse(false);
  }

  /**
   * What opens an address.
   *
   * @param system the system's name, as Java gives it
   * @return a command; none where there is no screen
   */
  static Optional<List<String>> words(
      String system, Map<String, String> environment, String address) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler", address));
    }
    if (name.startsWith("mac")) {
      return Optional.of(List.of("open", address));
    }
    return environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY")
        ? Optional.of(List.of("xdg-open", address))
        : Optional.empty();
  }

  /**
   * Starts a command.
   *
   * @return false where there is no such program
   */
  static boolean started(List<String> words) {
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
