package starchfilm.web.http;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** What tells contents apart: their SHA-256. */
public final class Fingerprint {
  private Fingerprint() {}

  /**
   * The fingerprint of parts in a row.
   *
   * @param parts the content
   * @return 32 bytes
   */
  public static byte[] of(Iterable<byte[]> parts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      parts.forEach(digest::update);
      return digest.digest();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
