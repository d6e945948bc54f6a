/**
 * The evidence behind a number: where it was published, how far that was checked, over which range
 * it holds, and how wide it is.
 *
 * <p>An {@link starchfilm.numerics.evidence.Estimate} is a figure that goes into the model with its
 * standard uncertainty; a {@link starchfilm.numerics.evidence.Band} is a figure that comes out, as
 * its 10, 50 and 90 % points. A {@link starchfilm.numerics.evidence.Source} names a publication and
 * says whether its figure was read, recalled, computed or merely judged. The same records feed the
 * Javadoc links, the warnings and the list of sources on the page, so a citation stands in one
 * place only.
 *
 * <p>This is the lowest floor of the house: every package may use it, and it uses none.
 */
@NullMarked
package starchfilm.numerics.evidence;

import org.jspecify.annotations.NullMarked;
