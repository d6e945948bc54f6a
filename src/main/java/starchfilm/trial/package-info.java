/**
 * Trials and the notebook they make: one JSON file a trial, read tolerantly and complained about
 * precisely, and rewritten without losing what the program does not know.
 *
 * <p>The keys of a file carry their unit; the records here are SI. Every fault of every file is a
 * {@link starchfilm.trial.Fault} with its place and the way to mend it.
 */
@NullMarked
package starchfilm.trial;

import org.jspecify.annotations.NullMarked;
