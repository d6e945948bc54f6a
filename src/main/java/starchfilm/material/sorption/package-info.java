/**
 * The moisture that a film holds at a water activity.
 *
 * <p>Moisture content X is kg water per kg dry solids (dry starch, glycerol and salt). Water
 * activity is the vapour pressure over the film divided by that over pure water at the same
 * temperature; at rest it equals the relative humidity of the air. The equilibrium moisture content
 * is X at that activity. Start from {@code FilmIsotherm}.
 */
@NullMarked
package starchfilm.material.sorption;

import org.jspecify.annotations.NullMarked;
