/**
 * What is cast: what was poured, how thick and how evenly, on what, in which air, and which faces
 * of the film are open from when.
 *
 * <p>Wet thickness is the paste's thickness when poured, averaged over the plate. No plate is
 * level: its thin edge, its nominal thickness and its thick spot are followed apart. The air is
 * constant, swings with the day, or is as a hygrometer logged it; time runs in seconds from the
 * pour. Nothing is solved here. Start from {@link starchfilm.casting.Casting}.
 */
@NullMarked
package starchfilm.casting;

import org.jspecify.annotations.NullMarked;
