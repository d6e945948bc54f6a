package starchfilm.request;

import java.util.Optional;

/**
 * One mistake in what was written.
 *
 * @param field the field it stands in; empty where it is of several, or of the whole
 * @param sentence what is wrong and how to fix it, in the words of the door
 */
public record Mistake(Optional<Field> field, String sentence) {}
