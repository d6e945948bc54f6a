/**
 * The properties of a film for the water in it while it dries: how fast water moves, tabulated for
 * one paste, what it holds, and the heat its solids store.
 *
 * <p>X is kg water per kg dry solids. The coordinate is fixed to the solids, so that the film may
 * shrink. Start from {@link starchfilm.material.wetfilm.WaterDiffusivity} for the physics, from
 * {@link starchfilm.material.wetfilm.FilmMaterial} for what the solver reads.
 */
@NullMarked
package starchfilm.material.wetfilm;

import org.jspecify.annotations.NullMarked;
