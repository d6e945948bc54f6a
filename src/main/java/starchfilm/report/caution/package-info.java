/**
 * What may hurt, and how to keep it from doing so. Every caution stands once, in {@link
 * starchfilm.report.caution.Caution}; {@link starchfilm.report.caution.Cautions} decides from the
 * facts of a jar, a trial or a plan which of them apply, and every door shows what it decides.
 */
@NullMarked
package starchfilm.report.caution;

import org.jspecify.annotations.NullMarked;
