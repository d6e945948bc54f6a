package starchfilm.web.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.stream.Collectors;

/** Texts that nobody can guess. */
final class Secret {
  /** Letters and digits that are not mistaken for each other on paper. */
  private static final String LEGIBLE = "abcdefghjkmnpqrstuvwxyz23456789";

  private static final int TYPED_GROUPS = 3;
  private static final int TYPED_GROUP_LENGTH = 4;
  private static final int BYTES = 16;

  private Secret() {}

  /**
   * A secret for machines.
   *
   * @return 128 random bits, safe in addresses and cookies
   */
  static String ofMachine() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /**
   * A secret that is read from a screen and typed.
   *
   * @return twelve letters and digits, 59 random bits, in groups of four
   */
  static String ofHand() {
    return new SecureRandom()
        .ints(TYPED_GROUPS * TYPED_GROUP_LENGTH, 0, LEGIBLE.length())
        .mapToObj(letter -> LEGIBLE.substring(letter, letter + 1))
        .collect(Collectors.joining())
        .replaceAll("(.{" + TYPED_GROUP_LENGTH + "})(?=.)", "$1-");
  }

  /**
   * Compares in a time that does not tell how much of a guess was right.
   *
   * @return true where they are the same
   */
  static boolean matches(String secret, String given) {
    return MessageDigest.isEqual(
        secret.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
  }
}
