/**
 * Answers as sheets: lines for a terminal, and the same as JSON and as CSV for other programs, from
 * rows whose keys are documented once.
 *
 * <p>Start from {@link starchfilm.report.data.Sheet}.
 */
@NullMarked
package starchfilm.report.data;

import org.jspecify.annotations.NullMarked;
