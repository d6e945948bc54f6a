/** The plates that need somebody now, as a page, as lines, as data and as a calendar. */
@NullMarked
package starchfilm.report.today;

import org.jspecify.annotations.NullMarked;
