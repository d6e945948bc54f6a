/**
 * A cast plate: what was poured, how thick and how evenly, on what, in which room, and which faces
 * of the film are open from when.
 *
 * <p>Wet thickness is the paste's thickness when poured, averaged over the plate. No plate is
 * level: its thin edge, its nominal thickness and its thick spot are followed apart. Nothing is
 * solved here. Start from {@link starchfilm.plate.DryingCase}, which holds all of it and refuses
 * what no plate is.
 */
@NullMarked
package starchfilm.plate;

import org.jspecify.annotations.NullMarked;
