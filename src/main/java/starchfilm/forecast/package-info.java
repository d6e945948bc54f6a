/**
 * The forecast of a trial: its film, its drying, its risks, and what more of each ingredient would
 * change.
 *
 * <p>What is known beforehand, from the textbook alone or from a notebook too, comes in as {@link
 * starchfilm.forecast.TrialKnowledge}. Start from {@link starchfilm.forecast.TrialForecaster}.
 */
@NullMarked
package starchfilm.forecast;

import org.jspecify.annotations.NullMarked;
