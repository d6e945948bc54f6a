/**
 * Learning from a notebook: how this maker's rooms and pastes depart from the textbook.
 *
 * <p>Every uncertain {@link starchfilm.drying.uncertainty.UncertainParameter} of a plate is a sum
 * of four parts: one common to all plates, one of its room, one of its starch kind, and one of the
 * plate alone. Weighings of a plate teach its sum; many plates together teach the parts, each held
 * back towards zero by its share of the textbook's spread ({@code VarianceShares}), so that a room
 * with one weighing is hardly distinguished from the others and a new room starts from what all
 * have in common.
 *
 * <p>What one plate teaches is kept as a {@code PlateLikelihood}: the likelihoods add up, and a
 * forecast of a plate leaves that plate's own likelihood out and takes its weighings instead, so
 * that no reading counts twice. Start from {@code Workshop}.
 */
@NullMarked
package starchfilm.learning;

import org.jspecify.annotations.NullMarked;
