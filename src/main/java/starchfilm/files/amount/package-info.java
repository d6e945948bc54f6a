/**
 * Amounts and times as people type them: {@code 412 g}, {@code 1,5 mm}, {@code 25x30 cm}, {@code
 * yesterday 18:30}, {@code +6h}.
 *
 * <p>A decimal comma is read as one, and anything that could be read in two ways is refused with a
 * sentence that says how to write it. What comes out is SI. Start from {@link
 * starchfilm.files.amount.TypedAmount} and {@link starchfilm.files.amount.MomentParser}.
 */
@NullMarked
package starchfilm.files.amount;

import org.jspecify.annotations.NullMarked;
