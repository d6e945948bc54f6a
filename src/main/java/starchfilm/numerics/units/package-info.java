/**
 * Constants of units and of nature, each in one place: {@link starchfilm.numerics.units.Units} and
 * {@link starchfilm.numerics.units.Nature}.
 */
@NullMarked
package starchfilm.numerics.units;

import org.jspecify.annotations.NullMarked;
