/**
 * Constants of units and of nature, each in one place: {@link starchfilm.numerics.units.Units} and
 * {@link starchfilm.numerics.units.Nature}. And how kinds and counts are spelt: {@link
 * starchfilm.numerics.units.Named}, {@link starchfilm.numerics.units.Plural}.
 */
@NullMarked
package starchfilm.numerics.units;

import org.jspecify.annotations.NullMarked;
