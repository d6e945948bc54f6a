/**
 * What needs its maker now: how each plate stands at a moment, what a scale under it would show,
 * and what to do about it first.
 *
 * <p>Start from {@link starchfilm.today.Today}. Everything is in SI and counted from the pour; no
 * clock is asked.
 */
@NullMarked
package starchfilm.today;

import org.jspecify.annotations.NullMarked;
