package starchfilm.report;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.List;
import java.util.stream.Collectors;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Spans;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.Strip;
import starchfilm.report.chart.TimeScale;
import starchfilm.report.words.PlainWords;

/** One time axis for all trials of the page, and each trial's waiting time as a strip on it. */
record DryingScale(TimeScale time) {
  private static final int AXIS_TICKS = 12;

  /** What the axis shows where every plate is ready as it is poured (s). */
  private static final double SHORTEST_S = HOUR_S;

  /** What the axis shows where nothing dries (s). */
  private static final double NOTHING_DRIES_S = 10 * DAY_S;

  /** The scale on which all trials have room. */
  static DryingScale of(List<TrialForecast> trials) {
    double[] momentsS =
        trials.stream()
            .flatMap(trial -> Awaited.timesS(trial.drying()))
            .flatMapToDouble(Band::points)
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    double first = momentsS.length == 0 ? NOTHING_DRIES_S : momentsS[0];
    double last = momentsS.length == 0 ? NOTHING_DRIES_S : momentsS[momentsS.length - 1];
    boolean wide = TimeScale.isWide(first, last);
    return new DryingScale(
        TimeScale.of(
            wide ? first / 1.2 : 0,
            wide ? 1.15 * last : last > 0 ? 1.03 * last : SHORTEST_S,
            Strip.FIRST_PLACE,
            Strip.LAST_PLACE));
  }

  public Axis axis() {
    return time.axis(AXIS_TICKS);
  }

  /** The waiting times of a trial. */
  public Strip strip(TrialForecast trial) {
    return strip(
        "When it is ready",
        PlainWords.capital(
            Awaited.all().stream()
                .map(
                    one ->
                        Awaited.label(one, " in the ") + ": " + Spans.of(trial.drying().timeS(one)))
                .collect(Collectors.joining("; "))),
        axis().ticks(),
        Awaited.marked(time, trial.drying()::timeS));
  }

  /** One waiting time. */
  Strip strip(String kind, Band seconds) {
    return strip(kind, Spans.of(seconds), List.of(), List.of(time.marked(kind, seconds)));
  }

  private Strip strip(String title, String words, List<Axis.Tick> grid, List<Lane.Marked> marked) {
    return new Strip(title, words, grid, Lane.of("", "", "", 0, time.scale(), marked), List.of());
  }
}
