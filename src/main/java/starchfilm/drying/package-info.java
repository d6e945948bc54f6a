/**
 * How a cast plate dries: the moisture equations of a shrinking film in a room, solved for its thin
 * edge, its nominal thickness and its thick spot, with bands.
 *
 * <p>X is kg water per kg dry solids. The constant-rate period is the time during which the open
 * face stays wet and the room alone sets the pace; in the falling-rate period the film does.
 * Milestones: <em>skin-dry</em>, <em>peelable</em> and <em>dry-through</em>, in this order. Start
 * from {@link starchfilm.drying.DryingForecaster}.
 */
@NullMarked
package starchfilm.drying;

import org.jspecify.annotations.NullMarked;
