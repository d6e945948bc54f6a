package starchfilm.report.today;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Weighing;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.report.Headline;
import starchfilm.report.caution.Caution;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.Spans;
import starchfilm.today.MouldRelief;
import starchfilm.today.Need;
import starchfilm.today.Standing;
import starchfilm.today.WakingHours;

/** What is said of one plate as it stands now: the same words on every page and in the terminal. */
public final class PlateWords {
  /** A scale that is better than this shows tenths of a gram (kg). */
  private static final double SHOWS_TENTHS_KG = 1e-4;

  private final Standing standing;
  private final PourCalendar calendar;

  /** Words about one plate. */
  public PlateWords(Standing standing) {
    this.standing = standing;
    this.calendar = PourCalendar.of(standing.forecast().trial());
  }

  /** Its trial, and which plates of it, or how many, where several were poured. */
  public String who() {
    String plates = plates();
    return standing.forecast().trial().name()
        + (!plates.isEmpty()
            ? ", " + plates
            : standing.of() == 1 ? "" : " (" + standing.of() + " plates)");
  }

  /** Which plates of the pour; empty where it is all of them. */
  public String plates() {
    List<Integer> numbers = standing.plates();
    if (numbers.size() == standing.of()) {
      return "";
    }
    String all = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return (numbers.size() == 1 ? "plate " : "plates ") + all;
  }

  /** What it needs and why, in one sentence; where it is wanted by a date, a second on that. */
  public String sentence() {
    return need() + wanted().map(words -> " " + words).orElse("");
  }

  /** Whether it is ready by the date its plan was made for. */
  public Optional<String> wanted() {
    OptionalDouble byS = standing.forecast().trial().wanted().byS();
    if (byS.isEmpty() || standing.need() == Need.OVERDUE) {
      return Optional.empty();
    }
    Band ready = standing.readyS();
    String chance =
        byS.getAsDouble() >= ready.high()
            ? "in time in 9 of 10 cases or more"
            : byS.getAsDouble() >= ready.middle()
                ? "more likely in time than not"
                : byS.getAsDouble() >= ready.low()
                    ? "more likely late than not"
                    : "late in 9 of 10 cases or more";
    return Optional.of("Wanted by " + calendar.byTheHour(byS.getAsDouble()) + ": " + chance + ".");
  }

  private String need() {
    String who = who();
    String ready = ready();
    return switch (standing.need()) {
      case PEEL ->
          "Peel "
              + who
              + " now: "
              + (standing.isDryByTheScale()
                  ? ready
                  : "dry through by now in "
                      + (standing.nowS() >= standing.readyS().high()
                          ? "9 of 10 cases or more"
                          : "more than half of the likely cases")
                      + "; "
                      + ready)
              + ".";
      case OVERDUE ->
          "Check "
              + who
              + ": it should have been ready by "
              + calendar.date(standing.readyS().high())
              + ". Peel it, or note what became of it.";
      case NEVER_DRIES -> who + ": " + Headline.of(standing.forecast());
      case MOULDS_SOON, MOULDS_LATER ->
          (standing.nowS() >= standing.mouldFromS()
                  ? "Check "
                      + who
                      + " for mould: it may have shown since "
                      + near(standing.mouldFromS())
                  : "Dry "
                      + who
                      + " faster: mould may show from "
                      + near(standing.mouldFromS())
                      + " on")
              + ", and it is dry "
              + (Double.isInfinite(standing.readyS().middle())
                  ? "never"
                  : "about " + calendar.range(standing.readyS()))
              + ". "
              + (standing.nowS() >= standing.mouldFromS()
                  ? "If it shows none, dry it faster. "
                  : "")
              + relief();
      case WEIGH ->
          "Weigh "
              + who
              + " now: "
              + narrowing()
              + (standing.last().isEmpty() ? "; it has not been weighed yet." : ".");
      case LOOK ->
          "Look at "
              + who
              + ": it may be dry through at any time now"
              + (Double.isInfinite(standing.readyS().high())
                  ? ""
                  : ", in 9 of 10 cases by " + near(standing.readyS().high()))
              + "; "
              + ready
              + ".";
      case WAIT -> who + ": next look " + look() + "; " + ready + ".";
    };
  }

  private String ready() {
    return "ready when "
        + (standing.emptyKg().isPresent() ? "the scale shows " : "its film alone weighs ")
        + scale(standing.scale().dryKg())
        + standing
            .last()
            .filter(Weighing::tared)
            .map(last -> ", it showed " + shown(last))
            .orElse("");
  }

  private String shown(Weighing last) {
    return scale(last.filmMassKg()) + " on " + calendar.toTheMinute(last.timeS());
  }

  /** What a weighing now would do to the range. */
  public String narrowing() {
    double left = standing.scale().rangeLeft();
    double widthS = standing.readyS().high() - Math.max(standing.readyS().low(), standing.nowS());
    String effect =
        left <= 0.55 && left >= 0.45
            ? "halves the range"
            : left < 0.45 ? "more than halves the range" : "narrows the range";
    return "that "
        + effect
        + (Double.isInfinite(widthS)
            ? ""
            : " of its drying time, from "
                + Spans.of(widthS)
                + " to about "
                + Spans.of(left * widthS, widthS));
  }

  /** When it is dry through, in the middle case. */
  String readyDate() {
    return Double.isInfinite(standing.readyS().middle())
        ? "never dry here"
        : "dry about " + calendar.date(standing.readyS().middle());
  }

  /** The hours in which to look. */
  public String look() {
    if (standing.need() == Need.PEEL || standing.need() == Need.OVERDUE) {
      return "now";
    }
    if (Double.isInfinite(standing.lookFromS())) {
      return "not in this room";
    }
    String window = calendar.window(standing.lookFromS(), standing.lookUntilS());
    boolean moved = standing.looksAroundNight() && window.contains(":");
    return moved ? window + " (" + WakingHours.WORDS + ")" : window;
  }

  /** How much of the water is left. */
  public String waterLeft() {
    Band left = standing.waterLeft();
    return "about "
        + Figures.whole(100 * left.middle())
        + " % of its water is left"
        + around(Figures.whole(100 * left.low()), Figures.whole(100 * left.high()));
  }

  /** The same as a sentence. */
  public String waterLeftSentence() {
    return "A" + waterLeft().substring(1) + ".";
  }

  /** What may hurt whoever dries it faster or finds it mouldy. */
  public List<Caution> cautions() {
    return switch (standing.need()) {
      case MOULDS_SOON, MOULDS_LATER -> List.of(Caution.FANS_AND_HEATERS, Caution.MOULD);
      case PEEL, OVERDUE, NEVER_DRIES, WEIGH, LOOK, WAIT -> List.of();
    };
  }

  /** What the scale shows, and of what. */
  public String scaleHead() {
    return standing.emptyKg().isPresent()
        ? "On the scale, plate included"
        : "The film alone (the weight of the empty plate is not noted)";
  }

  /** What the scale should show now. */
  public String scaleNow() {
    Estimate now = standing.scale().nowKg();
    Band band = Band.normal(now.value(), now.sd());
    return scale(now.value()) + around(figure(band.low()), figure(band.high()));
  }

  private static String around(String low, String high) {
    return low.equals(high) ? "" : " (" + Figures.range(low, high) + ")";
  }

  /** What it shows when it is peelable. */
  public String scalePeelable() {
    return Double.isInfinite(standing.peelableS().middle())
        ? "never"
        : scale(standing.scale().peelableKg());
  }

  /** What it shows when it is dry through. */
  public String scaleDry() {
    return Double.isInfinite(standing.readyS().middle())
        ? "never"
        : scale(standing.scale().dryKg());
  }

  /** What the range was at the pour, where weighings narrowed it. */
  public Optional<String> before() {
    TrialForecast forecast = standing.forecast();
    return forecast.weighed().takenIn() == 0
        ? Optional.empty()
        : Optional.of(Spans.of(standing.readyAtThePourS()));
  }

  private String scale(double filmKg) {
    return figure(filmKg) + " g";
  }

  /** As the scale shows it: tenths where it shows tenths. */
  private String figure(double filmKg) {
    double grams = ReaderUnit.GRAM.of(filmKg + standing.emptyKg().orElse(0));
    boolean tenths = standing.last().filter(last -> last.massSdKg() < SHOWS_TENTHS_KG).isPresent();
    return tenths ? Figures.tenths(grams) : Figures.whole(grams);
  }

  /** What reruns show to help most, as far as it may be done. */
  private String relief() {
    boolean noFan = standing.forecast().trial().recipe().glycerol().mayHoldMethanol();
    return standing
            .relief()
            .map(relief -> relief(relief, noFan))
            .orElse("Neither moving, drier or warmer air nor a rack helps; pour thinner next time.")
        + (noFan ? " No fan: the glycerol may hold methanol." : "");
  }

  private String relief(MouldRelief relief, boolean noFan) {
    boolean rack = relief.kind() == MouldRelief.Kind.RACK;
    String what =
        switch (relief.kind()) {
          case MOVING_AIR ->
              noFan ? "moving air from an open window" : "a fan, its cable off the wet tray";
          case DRIER_AIR ->
              "drier air, "
                  + Figures.whole(100 * relief.to())
                  + " instead of "
                  + Figures.whole(100 * relief.from())
                  + " % RH";
          case WARMER_AIR ->
              "warmer air, "
                  + ReaderUnit.CELSIUS.two(relief.to())
                  + " instead of "
                  + ReaderUnit.CELSIUS.two(relief.from())
                  + " °C";
          case RACK -> "a rack from " + near(relief.from()) + " on, when it can be peeled";
        };
    String then =
        Double.isInfinite(relief.growthFromS())
            ? "no mould is to be expected"
            : relief.growthFromS() > Math.max(standing.nowS(), standing.mouldFromS())
                    && !near(relief.growthFromS()).equals(near(standing.mouldFromS()))
                ? "mould may show from " + near(relief.growthFromS()) + " on"
                : "";
    String effect =
        then.isEmpty()
            ? ", though mould may still show"
            : rack
                ? ": " + then + " then"
                : ": with it from the pour on " + then + ", from now on it helps less";
    return "What helps most is " + what + effect + ".";
  }

  /** A moment, about the hour where it is within two days of now, else the day. */
  private String near(double atS) {
    return Math.abs(atS - standing.nowS()) < 2 * DAY_S
        ? calendar.window(atS, atS)
        : calendar.date(atS);
  }
}
