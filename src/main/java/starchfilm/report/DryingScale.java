package starchfilm.report;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.Milestone;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.Figures;
import starchfilm.report.words.Spans;

/** One time axis for all trials of the page, and each trial's waiting time as a strip on it. */
record DryingScale(Scale scale) {
  private static final int AXIS_TICKS = 12;

  /** Where every plate is ready as it is poured, the axis shows this much (s). */
  private static final double SHORTEST_S = HOUR_S;

  /** Where nothing dries, the axis shows this much (s). */
  private static final double NOTHING_DRIES_S = 10 * DAY_S;

  /** Where the slowest waits this many times longer than the quickest, equal steps are ratios. */
  private static final double LOGARITHMIC_FROM = 8;

  /** Ticks of a logarithmic axis (s). */
  private static final double[] LOG_TICKS_S = {
    HOUR_S,
    2 * HOUR_S,
    6 * HOUR_S,
    12 * HOUR_S,
    DAY_S,
    2 * DAY_S,
    5 * DAY_S,
    10 * DAY_S,
    20 * DAY_S,
    50 * DAY_S
  };

  /**
   * The axis that holds every trial.
   *
   * @return to a little past the last finite moment, from the pour or, where the trials differ
   *     much, from a little before the first
   */
  static DryingScale of(List<TrialForecast> trials) {
    List<Double> moments = new ArrayList<>();
    for (TrialForecast trial : trials) {
      for (Band band : List.of(peelable(trial), dryThrough(trial))) {
        for (double moment : new double[] {band.low(), band.middle(), band.high()}) {
          if (Double.isFinite(moment)) {
            moments.add(moment / DAY_S);
          }
        }
      }
    }
    double first = moments.stream().min(Double::compare).orElse(NOTHING_DRIES_S / DAY_S);
    double last = moments.stream().max(Double::compare).orElse(NOTHING_DRIES_S / DAY_S);
    return new DryingScale(
        last > LOGARITHMIC_FROM * first && first > 0
            ? Scale.logarithmic(first / 1.2, last * 1.15, Strip.FIRST_PLACE, Strip.LAST_PLACE)
            : Scale.linear(
                0,
                last > 0 ? 1.03 * last : SHORTEST_S / DAY_S,
                Strip.FIRST_PLACE,
                Strip.LAST_PLACE));
  }

  /**
   * When most of a plate can be peeled.
   *
   * @return the band of the nominal thickness (s)
   */
  static Band peelable(TrialForecast trial) {
    return peelable(trial.drying());
  }

  static Band peelable(DryingForecast drying) {
    return drying.at(Spot.NOMINAL).at(Milestone.PEELABLE).timeS();
  }

  /**
   * When a plate is dry all through.
   *
   * @return the band of the thick spot (s)
   */
  static Band dryThrough(TrialForecast trial) {
    return dryThrough(trial.drying());
  }

  static Band dryThrough(DryingForecast drying) {
    return drying.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
  }

  /** The axis on its own. */
  List<Strip.Grid> axis() {
    if (!scale.logarithmic()) {
      return Strip.grid(scale, AXIS_TICKS);
    }
    List<Strip.Grid> lines = new ArrayList<>();
    for (double seconds : LOG_TICKS_S) {
      double days = seconds / DAY_S;
      if (days >= scale.from() && days <= scale.to()) {
        String label =
            days < 1 ? Figures.noted(seconds / HOUR_S) + " h" : Figures.noted(days) + " d";
        lines.add(new Strip.Grid(scale.place(days) + "%", label, lines.size() % 2 == 1));
      }
    }
    return lines;
  }

  /**
   * The axis in words.
   *
   * @return what it counts, and how
   */
  String axisTitle() {
    return scale.logarithmic()
        ? "time since the pour; equal steps are equal ratios"
        : "days since the pour";
  }

  /** A trial's waiting time. */
  Strip strip(TrialForecast trial) {
    List<Strip.Range> ranges = new ArrayList<>();
    List<Strip.Dot> dots = new ArrayList<>();
    add("peelable", peelable(trial), ranges, dots);
    add("dry", dryThrough(trial), ranges, dots);
    return new Strip(
        "When it is ready",
        "Peelable: "
            + Spans.of(peelable(trial))
            + "; dry through in the thick spot: "
            + Spans.of(dryThrough(trial)),
        axis(),
        ranges,
        dots);
  }

  /**
   * One moment as a strip for a table cell.
   *
   * @param seconds when (s)
   */
  Strip strip(String kind, Band seconds) {
    List<Strip.Range> ranges = new ArrayList<>();
    List<Strip.Dot> dots = new ArrayList<>();
    add(kind, seconds, ranges, dots);
    return new Strip(kind, Spans.of(seconds), List.of(), ranges, dots);
  }

  private void add(String kind, Band seconds, List<Strip.Range> ranges, List<Strip.Dot> dots) {
    if (Double.isInfinite(seconds.low())) {
      return;
    }
    ranges.add(Strip.range(kind, scale, seconds.low() / DAY_S, seconds.high() / DAY_S));
    if (Double.isFinite(seconds.middle())) {
      dots.add(new Strip.Dot(kind, scale.place(seconds.middle() / DAY_S) + "%"));
    }
  }
}
