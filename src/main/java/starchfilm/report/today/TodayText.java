package starchfilm.report.today;

import java.util.ArrayList;
import java.util.List;
import starchfilm.today.Today;

/** What to do now, as lines for a terminal. */
public final class TodayText {
  private TodayText() {}

  /**
   * The lines.
   *
   * @param today what to do
   * @return a line a thought, not yet broken
   */
  public static List<String> of(Today today) {
    TodayView view = TodayView.of(today, TodayView.Addresses.NONE);
    List<String> lines = new ArrayList<>();
    lines.add(view.moment() + ". " + view.headline());
    for (TodayView.Item item : view.todo()) {
      PlateWords words = item.words();
      lines.add("");
      lines.add(item.sentence());
      lines.add("  " + words.waterLeft() + "; look " + words.look() + ".");
      lines.add(
          "  "
              + words.scaleHead()
              + ": now "
              + words.scaleNow()
              + ", peelable "
              + words.scalePeelable()
              + ", dry through "
              + words.scaleDry()
              + ".");
      words
          .before()
          .ifPresent(
              before -> lines.add("  Forecast at the pour: dry through after " + before + "."));
      item.standing().forecast().weighed().questions().forEach(asked -> lines.add("  " + asked));
    }
    if (!view.planned().isEmpty()) {
      lines.add("");
      lines.add("Not poured yet: " + String.join("; ", view.planned()) + ".");
    }
    lines.addAll(view.questions());
    view.cautions().forEach(caution -> lines.add("! " + caution.sentence()));
    return lines;
  }
}
