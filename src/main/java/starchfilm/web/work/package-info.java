/**
 * Work that takes its time, while the reader sees how far it is and may stop it, and the forecasts
 * that came of it last.
 *
 * <p>Start from {@link starchfilm.web.work.Workbench}.
 */
@NullMarked
package starchfilm.web.work;

import org.jspecify.annotations.NullMarked;
