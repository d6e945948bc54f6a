package starchfilm.report;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.Milestone;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.TimeScale;
import starchfilm.report.words.PlainWords;

/** The milestones of a plate that its maker waits for: what rows, charts and sheets list. */
public final class Awaited {
  private static final List<Milestone> ALL = List.of(Milestone.PEELABLE, Milestone.DRY_THROUGH);

  private Awaited() {}

  public static List<Milestone> all() {
    return ALL;
  }

  /** The times at which they come for a plate (s since the pour). */
  static Stream<Band> timesS(DryingForecast drying) {
    return ALL.stream().map(drying::timeS);
  }

  /** The first word of its name: the class of its marks, and in the names of columns. */
  public static String key(Milestone milestone) {
    return field(milestone).replaceFirst("_.*", "");
  }

  /** Its name among the fields of an answer. */
  public static String field(Milestone milestone) {
    return milestone.name().toLowerCase(Locale.ROOT);
  }

  /** Its name with the spot that counts for a plate, where that is not the average. */
  static String label(Milestone milestone, String between) {
    return PlainWords.word(milestone)
        + (milestone.spot() == Spot.NOMINAL ? "" : between + PlainWords.word(milestone.spot()));
  }

  /** The mark of one, as a list of marks has it. */
  public static Lane.Dot mark(Milestone milestone) {
    return new Lane.Dot(key(milestone), "");
  }

  /** Ranges and marks of all of them. */
  static List<Lane.Marked> marked(TimeScale time, Function<Milestone, Band> whenS) {
    return ALL.stream().map(one -> time.marked(key(one), whenS.apply(one))).toList();
  }
}
