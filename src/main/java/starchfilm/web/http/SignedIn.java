package starchfilm.web.http;

import java.time.Instant;

/**
 * A browser that was let in by a key, as its owner may know it again.
 *
 * @param number tells it apart on the page; it lets nobody in
 * @param name what it says of its device, and where it is
 * @param lastSeen when it last asked for something
 */
public record SignedIn(String number, String name, Instant lastSeen) {}
