package starchfilm.report.chart;

import java.util.List;

/**
 * Plates on one calendar: a row each, days as faint lines, now as one line through all rows. Places
 * along the calendar are per cent of its width; heights are in the drawing's own unit.
 *
 * @param description the same in words, for those who hear the page
 * @param height height of the whole
 * @param now where now is
 * @param days the midnights
 * @param rows the plates
 */
public record CalendarChart(
    String description, int height, String now, List<Axis.Tick> days, List<Lane> rows) {
  /** Height of a row. */
  public static final int ROW_HEIGHT = 46;
}
