/**
 * Humid air and what it carries from or to a plate.
 *
 * <p>Relative humidity is a ratio (0.5 means 50 %) of the vapour's partial pressure to the
 * saturation pressure over liquid water at the air's temperature. The transfer coefficients follow
 * the film temperature, the mean of surface and air. Start from {@code PlateTransfer}.
 */
@NullMarked
package starchfilm.material.air;

import org.jspecify.annotations.NullMarked;
