package starchfilm.advice;

import starchfilm.change.Change;
import starchfilm.numerics.evidence.Source;

/**
 * One row of the table of cures.
 *
 * @param cause what is put right
 * @param adjustment what a person can turn to do so
 * @param source why that helps
 */
public record Cure(Cause cause, Change adjustment, Source source) {}
