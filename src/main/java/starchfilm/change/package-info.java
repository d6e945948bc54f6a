/**
 * One thing changed in a casting, the forecast rerun, the difference kept.
 *
 * <p>{@link starchfilm.change.Change} is the one table of what a maker can change, by which steps
 * and within which limits; {@link starchfilm.change.Limits} holds the figures. {@link
 * starchfilm.casting.Setting} applies a figure to a casting. Here everything that reruns a forecast
 * begins: {@link starchfilm.change.TrialAnalyst} finds what more of each ingredient moves, and
 * which change would lower a risk most. Advice stands above.
 */
@NullMarked
package starchfilm.change;

import org.jspecify.annotations.NullMarked;
