/**
 * Constants of units and of nature, each in one place, and numbers as a reader finds them: rounded,
 * in a kitchen's units, a length of time in hours or days. Start from {@link
 * starchfilm.numerics.units.Units} and {@link starchfilm.numerics.units.ReaderUnit}.
 */
@NullMarked
package starchfilm.numerics.units;

import org.jspecify.annotations.NullMarked;
