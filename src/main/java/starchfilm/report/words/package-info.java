/**
 * Findings, moments and ingredients in the reader's words, with their figures in the reader's
 * units.
 *
 * <p>Everything inside the program is SI; here it becomes grams, millimetres, degrees Celsius, days
 * and per cent. A forecast figure has two significant figures and never comes without its range, of
 * which 8 of 10 likely cases lie inside. The words do not depend on locale, zone or clock.
 */
@NullMarked
package starchfilm.report.words;

import org.jspecify.annotations.NullMarked;
