package starchfilm.report.chart;

import java.util.ArrayList;
import java.util.List;
import starchfilm.report.chart.RoundTicks.RoundTick;

/**
 * An axis.
 *
 * @param title what it counts, with the unit
 * @param ticks its ticks, in order
 */
public record Axis(String title, List<Tick> ticks) {
  /** No axis. */
  public static final Axis NONE = new Axis("", List.of());

  /**
   * A tick.
   *
   * @param at its place
   * @param label its figure
   * @param under what stands below the figure, such as the day; may be empty
   * @param spare true where a narrow page leaves the label out
   */
  public record Tick(String at, String label, String under, boolean spare) {}

  /** Returns whether something stands below the figures, so that the title must stand lower. */
  public boolean isTwoLined() {
    return ticks.stream().anyMatch(tick -> !tick.under().isEmpty());
  }

  /**
   * An axis with ticks at round values.
   *
   * @param title what it counts
   * @param scale its scale
   * @param atMost how many ticks there is room for
   * @return the axis; every second label is spare
   */
  public static Axis of(String title, Scale scale, int atMost) {
    List<Tick> ticks = new ArrayList<>();
    for (RoundTick round :
        scale.logarithmic()
            ? RoundTicks.logarithmic(scale.from(), scale.to(), atMost)
            : RoundTicks.linear(scale.from(), scale.to(), atMost)) {
      ticks.add(new Tick(scale.place(round.value()), round.label(), "", ticks.size() % 2 == 1));
    }
    return new Axis(title, ticks);
  }
}
