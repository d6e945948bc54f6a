/**
 * The air around the plates over time: constant, swinging with the day, or as a hygrometer logged
 * it.
 *
 * <p>Time runs in seconds from the pour; before it, a log may have readings. Start from {@link
 * starchfilm.room.Room}.
 */
@NullMarked
package starchfilm.room;

import org.jspecify.annotations.NullMarked;
