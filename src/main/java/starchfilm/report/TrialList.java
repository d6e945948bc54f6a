package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.PourCalendar;

/**
 * Every trial in a line, to be put in order by the reader: the page of hundreds of trials begins
 * with it. The page has no script; each row knows its place in every order, and the style sheet
 * lays the rows out by the order that is chosen.
 *
 * @param orders what the rows can be put in order of; the rows stand in the first
 */
record TrialList(List<Order> orders, List<TrialLine> rows) {
  /** The orders in which trials can be put. */
  enum Order {
    /** As the trials are listed. */
    POUR("pour", Comparator.comparing(trial -> 0)),
    /** By the alphabet. */
    NAME("name", Comparator.comparing(trial -> trial.trial().name())),
    /** Those of one room together. */
    ROOM("room", Comparator.comparing(trial -> trial.casting().place().name())),
    /** Least plasticiser first. */
    GLYCEROL("glycerol", Comparator.comparing(TrialList::glycerol)),
    /** Thinnest pour first. */
    THICKNESS("wet thickness", Comparator.comparing(TrialList::wetThicknessM)),
    /** Soonest dry first. */
    DRY("time to dry", Comparator.comparing(trial -> trial.drying().dryThroughS().middle())),
    /** Best first, those without a rating last. */
    RATING("rating", Comparator.comparing(trial -> -trial.seen().rating().orElse(0))),
    /** Most first. */
    FAULTS("faults seen", Comparator.comparing(trial -> -trial.seen().faults().size()));

    private final String words;
    private final Comparator<TrialForecast> comparator;

    Order(String words, Comparator<TrialForecast> comparator) {
      this.words = words;
      this.comparator = comparator;
    }

    /**
     * The name of the order.
     *
     * @return such as {@code wet thickness}
     */
    public String words() {
      return words;
    }
  }

  /**
   * A trial.
   *
   * @param anchor where more of it is on this page; empty where there is no more
   * @param places its place in every order, as the style sheet reads it
   */
  record TrialLine(int number, String anchor, TrialForecast trial, String places) {
    /** The figures that tell it from the others, with units. */
    public List<String> facts() {
      return TrialList.facts(trial);
    }
  }

  /** The list. */
  static TrialList of(List<TrialForecast> trials) {
    List<Order> orders = List.of(Order.values());
    List<int[]> places = orders.stream().map(order -> places(order, trials)).toList();
    int beside = SideBySide.firstBeside(trials.size());
    List<TrialLine> rows = new ArrayList<>();
    for (int i = 0; i < trials.size(); i++) {
      StringBuilder style = new StringBuilder();
      for (int order = 0; order < places.size(); order++) {
        style.append("--o").append(order).append(':').append(places.get(order)[i]).append(';');
      }
      String anchor = i < beside ? "" : Anchor.ofTrial(i + 1);
      rows.add(new TrialLine(i + 1, anchor, trials.get(i), style.toString()));
    }
    return new TrialList(orders, rows);
  }

  private static int[] places(Order order, List<TrialForecast> trials) {
    List<Integer> sorted =
        IntStream.range(0, trials.size())
            .boxed()
            .sorted(Comparator.comparing(trials::get, order.comparator))
            .toList();
    int[] places = new int[trials.size()];
    for (int place = 0; place < places.length; place++) {
      places[sorted.get(place)] = place;
    }
    return places;
  }

  private static List<String> facts(TrialForecast forecast) {
    Trial trial = forecast.trial();
    int faults = trial.seen().faults().size();
    return List.of(
        PourCalendar.of(trial).pour(),
        trial.casting().place().name(),
        PERCENT.two(glycerol(forecast)) + " g glycerol",
        MILLIMETRE.two(wetThicknessM(forecast)) + " mm",
        "dry " + Spans.of(forecast.drying().dryThroughS()),
        trial.seen().rating().isPresent()
            ? trial.seen().rating().getAsInt() + " of 5"
            : "not rated",
        faults == 0 ? "no fault" : Plural.of(faults, "fault"));
  }

  private static double glycerol(TrialForecast trial) {
    return trial.composition().glycerolPerDryStarch();
  }

  private static double wetThicknessM(TrialForecast trial) {
    return trial.casting().pour().wetThicknessM().value();
  }
}
