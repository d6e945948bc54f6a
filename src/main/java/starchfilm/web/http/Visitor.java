package starchfilm.web.http;

import java.util.List;

/**
 * Whom a page is made for.
 *
 * @param secret what its cookie holds
 * @param isOwner true on the machine that runs the program, where it may be stopped
 * @param hasKey true where a key was needed to come in, so that logging out means something
 * @param others who else was let in by a key, the last seen first; for the owner alone
 */
public record Visitor(String secret, boolean isOwner, boolean hasKey, List<SignedIn> others) {
  /** Copies the list. */
  public Visitor {
    others = List.copyOf(others);
  }
}
