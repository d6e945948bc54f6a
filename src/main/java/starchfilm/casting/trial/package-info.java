/**
 * The facts of one trial, in SI: what was weighed, cooked and poured, in which room, and what was
 * seen and measured of it since.
 *
 * <p>A range widens the bands of a forecast; what is unknown or was left out is assumed, widely,
 * and listed as {@link starchfilm.casting.trial.NotRecorded} with what it costs. {@code
 * starchfilm.files.notebook} reads trials from files. Start from {@link
 * starchfilm.casting.trial.Trial}.
 */
@NullMarked
package starchfilm.casting.trial;

import org.jspecify.annotations.NullMarked;
