package starchfilm.web.http;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The key another device on the network shows once; then it is known by a cookie, and a new key is
 * made for the next device.
 */
final class OneTimeKey {
  private static final int MOST_DEVICES = 20;

  private final Consumer<String> printer;
  private final Set<String> devices = new HashSet<>();
  private String key;

  /** A first key. */
  OneTimeKey(Consumer<String> printer) {
    this.printer = printer;
    this.key = Secret.ofHand();
  }

  /** Shows the first key, once the address is known. */
  synchronized void print() {
    printer.accept(key);
  }

  /**
   * Takes a key.
   *
   * @param given the key as typed or as it stands in an address
   * @return what the device shows from now on; empty where the key is wrong or used
   */
  synchronized Optional<String> redeem(String given) {
    if (!Secret.matches(key, given.strip().toLowerCase(Locale.ROOT))) {
      return Optional.empty();
    }
    if (devices.size() >= MOST_DEVICES) {
      throw new HttpError(
          403,
          MOST_DEVICES
              + " devices share these trials already; restart the program to let in"
              + " more.");
    }
    String device = Secret.ofMachine();
    devices.add(device);
    key = Secret.ofHand();
    printer.accept(key);
    return Optional.of(device);
  }

  synchronized boolean knows(String device) {
    return devices.contains(device);
  }
}
