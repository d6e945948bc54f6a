/**
 * A recipe from the glycerol at hand, and a wet thickness for a deadline.
 *
 * <p>A {@link starchfilm.planning.PlanRequest} says what is in the cupboard, what film is wanted,
 * and when. The {@link starchfilm.planning.Planner} searches starch concentration, plasticiser
 * level, vinegar, wet thickness and the number of plates with the real film and drying forecasts,
 * rounds the best few to the balance, and forecasts what was rounded. {@link
 * starchfilm.planning.ThicknessFinder} turns a drying forecast round: from a deadline to a wet
 * thickness. A potful is what one pot holds; the plasticiser level is kg glycerol per kg dry
 * starch.
 */
@NullMarked
package starchfilm.planning;

import org.jspecify.annotations.NullMarked;
