/**
 * What the notebook advises, computed for a page and shown on it: the next trial over all, and of
 * one trial its faults with their causes, and how it differs from another.
 *
 * <p>Start from {@link starchfilm.report.advice.Advised}.
 */
@NullMarked
package starchfilm.report.advice;

import org.jspecify.annotations.NullMarked;
