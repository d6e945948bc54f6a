package starchfilm.advice;

import java.util.List;

/**
 * One thing done differently between two trials.
 *
 * @param what the thing, a noun phrase
 * @param from as it was
 * @param to as it is
 * @param effects what the model says this change does alone, the rest as in the first trial; empty
 *     where the model sees nothing move
 */
public record Difference(String what, String from, String to, List<ExpectedEffect> effects) {}
