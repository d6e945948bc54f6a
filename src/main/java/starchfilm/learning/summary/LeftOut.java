package starchfilm.learning.summary;

/**
 * A trial that could not be learnt from.
 *
 * @param file its file, from the folder of the workshop file
 * @param reason why, in one sentence
 */
public record LeftOut(String file, String reason) {}
