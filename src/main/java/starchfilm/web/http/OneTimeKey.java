package starchfilm.web.http;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The key a browser shows once; then it is known by a cookie, and a new key is made for the next.
 */
final class OneTimeKey {
  private static final int MOST_BROWSERS = 20;

  /** Who was silent for so long needs a new key; a plate dries in less. */
  private static final Duration FORGOTTEN_AFTER = Duration.ofDays(14);

  private final Consumer<String> printer;
  private final InstantSource clock;
  private final Map<String, SignedIn> browsers = new HashMap<>();
  private String key;

  /** A first key. */
  OneTimeKey(Consumer<String> printer, InstantSource clock) {
    this.printer = printer;
    this.clock = clock;
    this.key = Secret.ofHand();
  }

  /** Shows the first key, once the address is known. */
  synchronized String print() {
    printer.accept(key);
    return key;
  }

  /** Whether a key is the one that is good now; it stays so. */
  synchronized boolean fits(String given) {
    return Secret.matches(key, given.strip().toLowerCase(Locale.ROOT));
  }

  /**
   * Takes a key.
   *
   * @param given the key as typed or as it stands in an address
   * @param name what the browser says of itself
   * @return what the browser shows from now on; empty where the key is wrong or used
   */
  synchronized Optional<String> redeem(String given, String name) {
    if (!fits(given)) {
      return Optional.empty();
    }
    forgetTheSilent();
    if (browsers.size() >= MOST_BROWSERS) {
      throw new HttpError(
          403,
          MOST_BROWSERS
              + " browsers use these trials already; log out in one of them, or restart the"
              + " program.");
    }
    String browser = Secret.ofMachine();
    browsers.put(browser, new SignedIn(Secret.ofMachine(), name, clock.instant()));
    key = Secret.ofHand();
    printer.accept(key);
    return Optional.of(browser);
  }

  synchronized boolean knows(String browser) {
    forgetTheSilent();
    return browsers.computeIfPresent(
            browser, (same, it) -> new SignedIn(it.number(), it.name(), clock.instant()))
        != null;
  }

  /** Needs a new key from now on. */
  synchronized void forget(String browser) {
    browsers.remove(browser);
  }

  /**
   * Others need a new key from now on.
   *
   * @param browser stays
   * @param number whose number goes; empty for everybody's
   */
  synchronized void putOut(String browser, String number) {
    browsers
        .entrySet()
        .removeIf(
            entry ->
                !entry.getKey().equals(browser)
                    && (number.isEmpty() || entry.getValue().number().equals(number)));
  }

  /** All but one. */
  synchronized List<SignedIn> others(String browser) {
    return browsers.entrySet().stream()
        .filter(entry -> !entry.getKey().equals(browser))
        .map(Map.Entry::getValue)
        .toList();
  }

  private void forgetTheSilent() {
    Instant since = clock.instant().minus(FORGOTTEN_AFTER);
    browsers.values().removeIf(browser -> browser.lastSeen().isBefore(since));
  }
}
