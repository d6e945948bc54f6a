/**
 * What nobody knows of a plate exactly, as a few factors: likely cases are drawn from what is known
 * of them, and bands are read from the outcomes.
 *
 * <p>Start from {@link starchfilm.drying.uncertainty.ParameterDistribution}.
 */
@NullMarked
package starchfilm.drying.uncertainty;

import org.jspecify.annotations.NullMarked;
