/**
 * The log of a hygrometer beside a trial, read as loggers and people write it: cells, columns,
 * dates and their order, gaps.
 *
 * <p>Start from {@link starchfilm.files.roomlog.RoomLogReader}; what comes out is a {@link
 * starchfilm.casting.LoggedRoom}.
 */
@NullMarked
package starchfilm.files.roomlog;

import org.jspecify.annotations.NullMarked;
