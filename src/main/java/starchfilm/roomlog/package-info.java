/**
 * The log of a hygrometer beside a trial, read as loggers and people write it: cells, columns,
 * dates and their order, gaps.
 *
 * <p>Start from {@link starchfilm.roomlog.RoomLogReader}; what comes out is a {@link
 * starchfilm.room.LoggedRoom}.
 */
@NullMarked
package starchfilm.roomlog;

import org.jspecify.annotations.NullMarked;
