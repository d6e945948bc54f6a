/**
 * What was learnt from a notebook, as it is shown: of each room, of each starch, of the films, and
 * which readings were doubted or left out.
 *
 * <p>{@code starchfilm.learning} finds it out. Start from {@link starchfilm.learnt.Learnt}.
 */
@NullMarked
package starchfilm.learnt;

import org.jspecify.annotations.NullMarked;
