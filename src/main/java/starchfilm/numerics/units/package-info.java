/**
 * Constants of units and of nature, each in one place. Start from {@link
 * starchfilm.numerics.units.Units}.
 */
@NullMarked
package starchfilm.numerics.units;

import org.jspecify.annotations.NullMarked;
