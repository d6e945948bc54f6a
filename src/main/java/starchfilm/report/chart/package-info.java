/**
 * Figures for pages, drawn by fragments of the folder {@code templates}: what is drawn where, as
 * numbers and short strings, never as markup.
 *
 * <p>Two forms. A <em>curve figure</em> has a drawing area of its own (its {@code viewBox}) and
 * scales as a whole. A <em>strip</em> is a thin line of ranges and marks whose places are per cent
 * of its width, so that it fits a table cell and its marks stay round. Neither knows colours: it
 * names classes, and the style sheet decides for light, dark and print.
 */
@NullMarked
package starchfilm.report.chart;

import org.jspecify.annotations.NullMarked;
