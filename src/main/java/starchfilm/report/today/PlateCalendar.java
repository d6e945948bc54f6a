package starchfilm.report.today;

import static starchfilm.numerics.units.Units.DAY_S;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import starchfilm.casting.trial.WallClock;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.Awaited;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.CalendarChart;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.today.Standing;
import starchfilm.today.Today;

/** Draws all plates on one calendar, in the order in which they need somebody. */
final class PlateCalendar {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);

  /** So much of the past is shown (h), so that now is not at the edge. */
  private static final int HOURS_BACK = 18;

  private static final int LONGEST_DAYS = 21;

  /** Plates that are ready later than this do not make the days of the others too narrow. */
  private static final int ENOUGH_DAYS = 8;

  private static final int SHORTEST_DAYS = 2;
  private static final int LABELS = 8;
  private static final int LONGEST_LABEL = 44;
  private static final int FOOT = 26;
  private static final int LINE_IN_ROW = 30;

  private final Today today;
  private final LocalDateTime from;
  private final Scale scale;
  private final int days;

  private PlateCalendar(Today today) {
    this.today = today;
    this.from = today.now().minusHours(HOURS_BACK);
    double[] ends =
        today.standings().stream()
            .mapToDouble(standing -> at(standing, standing.readyS()))
            .sorted()
            .toArray();
    double enough =
        Arrays.stream(ends)
            .filter(end -> end <= ENOUGH_DAYS * DAY_S)
            .reduce(0, (before, end) -> end);
    double firstS = ends.length == 0 ? 0 : ends[0];
    double lastS = ends.length == 0 ? 0 : ends[ends.length - 1];
    double untilS = lastS > 2 * enough && enough > 0 ? enough : Math.max(firstS, lastS);
    double most = Math.min(LONGEST_DAYS, Math.max(SHORTEST_DAYS, 1.05 * untilS / DAY_S));
    this.days = (int) Math.ceil(most);
    this.scale = Strip.linear(0, days * DAY_S);
  }

  static CalendarChart of(Today today) {
    return new PlateCalendar(today).chart();
  }

  private double at(Standing standing, Band band) {
    double last = Double.isInfinite(band.high()) ? band.middle() : band.high();
    return Double.isInfinite(last) ? 0 : since(standing) + last;
  }

  /** From the beginning of the calendar to the pour (s); below 0 for an earlier pour. */
  private double since(Standing standing) {
    LocalDateTime poured = standing.forecast().trial().pouredAt().orElseThrow();
    return WallClock.secondsBetween(from, poured);
  }

  private CalendarChart chart() {
    List<Lane> rows = new ArrayList<>();
    for (Standing standing : today.standings()) {
      rows.add(row(standing, CalendarChart.ROW_HEIGHT * rows.size() + LINE_IN_ROW));
    }
    return new CalendarChart(
        "Each plate with the time in which it is peelable and dry through; now is one line.",
        CalendarChart.ROW_HEIGHT * rows.size() + FOOT,
        scale.place(WallClock.secondsBetween(from, today.now())),
        midnights(),
        rows);
  }

  private Lane row(Standing standing, int y) {
    PlateNow words = new PlateNow(standing);
    String who = words.who();
    boolean beyond = since(standing) + standing.readyS().middle() > scale.to();
    return Lane.of(
        (who.length() > LONGEST_LABEL ? who.substring(0, LONGEST_LABEL - 1) + "…" : who)
            + (beyond ? ": " + words.readyDate() : ""),
        "",
        "",
        y,
        scale,
        Awaited.all().stream()
            .map(
                one ->
                    new Lane.Marked(
                        Awaited.key(one), since(standing, standing.forecast().drying().timeS(one))))
            .toList());
  }

  private Band since(Standing standing, Band afterPourS) {
    double pouredS = since(standing);
    return afterPourS.map(timeS -> pouredS + timeS);
  }

  private List<Axis.Tick> midnights() {
    List<Axis.Tick> lines = new ArrayList<>();
    int every = (days + LABELS - 1) / LABELS;
    LocalDateTime midnight = from.toLocalDate().plusDays(1).atStartOfDay();
    for (int i = 0; ; i++) {
      double atS = WallClock.secondsBetween(from, midnight.plusDays(i));
      if (atS > scale.to()) {
        return lines;
      }
      boolean labelled = i % every == 0 && atS + DAY_S / 2 < scale.to();
      lines.add(
          new Axis.Tick(
              scale.place(atS),
              labelled ? DAY.format(midnight.plusDays(i)) : "",
              "",
              i % (2 * every) != 0));
    }
  }
}
