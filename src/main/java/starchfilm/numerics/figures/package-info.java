/**
 * Figures as a reader finds them: rounded, in a kitchen's units, a length of time in hours or days.
 * A room that computes without stating its results has no use for it. Start from {@link
 * starchfilm.numerics.figures.ReaderUnit}.
 */
@NullMarked
package starchfilm.numerics.figures;

import org.jspecify.annotations.NullMarked;
