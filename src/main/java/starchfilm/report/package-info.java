/**
 * Answers in the reader's units and words, charts as small figures, and the Thymeleaf rendering.
 *
 * <p>Nothing is computed here but units, rounding and words. The same input gives the same bytes.
 */
@NullMarked
package starchfilm.report;

import org.jspecify.annotations.NullMarked;
