/**
 * Nonlinear diffusion in one dimension with exchange at the faces and one lumped state beside it:
 * pure mathematics, which knows no starch.
 *
 * <p>The unknown lives on the nodes of a grid over a fixed interval; the flux between nodes is a
 * difference of a transformed variable (Kirchhoff), the faces exchange by any law of their value,
 * and one further unknown, common to all nodes, borders the tridiagonal system. Time is integrated
 * by a linearly implicit, L-stable method with error control and dense output.
 */
@NullMarked
package starchfilm.numerics.diffusion;

import org.jspecify.annotations.NullMarked;
