package starchfilm.web.http;

/**
 * A file sent with a form.
 *
 * @param field the form's field
 * @param name the name it has with the sender; never used as a path
 * @param bytes its content
 */
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
public record SentFile(String field, String name, byte[] bytes) {}
