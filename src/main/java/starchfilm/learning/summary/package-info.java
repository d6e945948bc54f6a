/**
 * The lessons of a notebook, as they are shown: of each room, of each starch, of the films, and
 * which readings were doubted or left out.
 *
 * <p>{@code starchfilm.learning} finds it out. Start from {@link
 * starchfilm.learning.summary.Learnt}.
 */
@NullMarked
package starchfilm.learning.summary;

import org.jspecify.annotations.NullMarked;
