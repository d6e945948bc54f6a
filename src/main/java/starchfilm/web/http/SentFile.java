package starchfilm.web.http;

/**
 * A file sent with a form.
 *
 * @param name the name it has with the sender; never used as a path
 */
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
public record SentFile(String name, byte[] bytes) {}
