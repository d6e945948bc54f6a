/**
 * Answers as tables for other programs: the same rows as JSON and as CSV, every key documented
 * once.
 *
 * <p>Start from {@link starchfilm.report.data.Sheet}.
 */
@NullMarked
package starchfilm.report.data;

import org.jspecify.annotations.NullMarked;
