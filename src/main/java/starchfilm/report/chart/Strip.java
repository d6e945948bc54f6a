package starchfilm.report.chart;

import java.util.List;

/**
 * A thin horizontal figure of ranges and marks; places are per cent of its width.
 *
 * @param title what it shows, for those who hear the page
 * @param description the same figures in words
 * @param grid faint lines at round values, with labels where the strip is an axis
 * @param ranges from where to where
 * @param dots single values
 * @param landmarks things one knows, to hold the values against
 */
public record Strip(
    String title,
    String description,
    List<Grid> grid,
    List<Range> ranges,
    List<Dot> dots,
    List<Landmark> landmarks) {
  /** Where the first value of a strip's scale is drawn (% of the width). */
  public static final double FIRST_PLACE = 2;

  /** Where the last value of a strip's scale is drawn (% of the width). */
  public static final double LAST_PLACE = 97;

  public Strip {
    grid = List.copyOf(grid);
    ranges = List.copyOf(ranges);
    dots = List.copyOf(dots);
    landmarks = List.copyOf(landmarks);
  }

  /**
   * A strip without landmarks.
   *
   * @param title what it shows
   * @param description the same figures in words
   * @param grid faint lines
   * @param ranges from where to where
   * @param dots single values
   */
  public Strip(
      String title, String description, List<Grid> grid, List<Range> ranges, List<Dot> dots) {
    this(title, description, grid, ranges, dots, List.of());
  }

  /**
   * A thing one knows.
   *
   * @param at its place, such as {@code 12.5%}
   * @param label what it is
   */
  public record Landmark(String at, String label) {}

  /**
   * A line at a round value.
   *
   * @param at place, such as {@code 12.5%}
   * @param label its figure
   * @param spare true where a narrow page leaves the label out
   */
  public record Grid(String at, String label, boolean spare) {}

  /**
   * A range.
   *
   * @param kind class of the line, such as {@code peelable}
   * @param from its low end, such as {@code 12.5%}
   * @param to its high end
   * @param open true where the high end lies beyond the strip
   */
  public record Range(String kind, String from, String to, boolean open) {}

  /**
   * A single value.
   *
   * @param kind class of the mark, such as {@code peelable}
   * @param at its place, such as {@code 12.5%}
   */
  public record Dot(String kind, String at) {}

  /**
   * Faint lines at the round values of a scale.
   *
   * @param scale a scale from {@link #FIRST_PLACE} to {@link #LAST_PLACE}
   * @param atMost how many lines there is room for
   * @return the lines in order; every second label is spare
   */
  public static List<Grid> grid(Scale scale, int atMost) {
    List<RoundTicks.Tick> ticks =
        scale.logarithmic()
            ? RoundTicks.logarithmic(scale.from(), scale.to(), atMost)
            : RoundTicks.linear(scale.from(), scale.to(), atMost);
    List<Grid> lines = new java.util.ArrayList<>();
    for (int i = 0; i < ticks.size(); i++) {
      RoundTicks.Tick tick = ticks.get(i);
      lines.add(new Grid(scale.place(tick.value()) + "%", tick.label(), i % 2 == 1));
    }
    return lines;
  }

  /**
   * A range on a scale.
   *
   * @param kind class of the line
   * @param scale the strip's scale
   * @param low the low end, in the scale's unit
   * @param high the high end; may be infinite
   * @return the range, open where it leaves the scale
   */
  public static Range range(String kind, Scale scale, double low, double high) {
    return new Range(kind, scale.place(low) + "%", scale.place(high) + "%", high > scale.to());
  }
}
