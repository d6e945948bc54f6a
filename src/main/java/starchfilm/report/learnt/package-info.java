/**
 * What the weighings taught, for the page and for a terminal, and how much nearer that brought the
 * forecasts.
 *
 * <p>Start from {@link starchfilm.report.learnt.LearntSoFar}.
 */
@NullMarked
package starchfilm.report.learnt;

import org.jspecify.annotations.NullMarked;
