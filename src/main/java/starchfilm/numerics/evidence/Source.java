package starchfilm.numerics.evidence;

/**
 * Where a number comes from, and how far that was checked.
 *
 * @param citation author, year, title or journal, table or equation; or "assumed, no source"
 * @param check how far the figure was checked
 */
public record Source(String citation, Check check) {}
