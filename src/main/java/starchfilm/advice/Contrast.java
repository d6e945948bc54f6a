package starchfilm.advice;

import java.util.List;

/**
 * One trial held against another: what was changed, and what came of it.
 *
 * @param verdict which was better by its maker's rating, a sentence
 * @param differences everything done differently that the model knows, in the order of the work
 * @param notNoted what may have been different too, for one of the two files does not say; a noun
 *     phrase each
 * @param outcomes everything that came out differently; may be empty
 */
public record Contrast(
    String verdict,
    List<Difference> differences,
    List<String> notNoted,
    List<OutcomeDifference> outcomes) {}
