/**
 * Constants of units and of nature, each in one place: {@link starchfilm.numerics.units.Units} and
 * {@link starchfilm.numerics.units.Nature}. And how kinds of things are spelt: {@link
 * starchfilm.numerics.units.Named}.
 */
@NullMarked
package starchfilm.numerics.units;

import org.jspecify.annotations.NullMarked;
