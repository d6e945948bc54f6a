package starchfilm.planning;

import java.util.Optional;

/**
 * A limit that a recipe has run into, and what moving it would buy.
 *
 * @param limit which
 * @param goal what the recipe is best at
 * @param now where the limit stands: kg for glycerol and starch, plates, s for the date, m for film
 *     thickness and rim, m3 for the pot, kg per kg paste for levelling; 0 for a wish
 * @param moved where it was moved to, to see; in the same unit
 * @param gives what the recipe gives as it is
 * @param buys what the same search finds then; empty where that is nothing better
 */
public record BindingLimit(
    Limit limit,
    Goal goal,
    double now,
    double moved,
    RecipeOutcome gives,
    Optional<RecipeOutcome> buys) {}
