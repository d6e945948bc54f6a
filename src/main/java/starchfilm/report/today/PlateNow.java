package starchfilm.report.today;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;
import static starchfilm.numerics.units.Units.DAY_S;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Weighing;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.change.Rerun;
import starchfilm.drying.DryingVerdict;
import starchfilm.drying.Milestone;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.report.DryingFigure;
import starchfilm.report.Headline;
import starchfilm.report.RiskTable;
import starchfilm.report.caution.Caution;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.SectionFigure;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.today.Need;
import starchfilm.today.Standing;
import starchfilm.today.WakingHours;

/**
 * One plate as it stands now: the same words, curve and cut on every page and in the terminal.
 *
 * @param standing how it stands
 */
public record PlateNow(Standing standing) {
  /** A scale that is better than this shows tenths of a gram (kg). */
  private static final double SHOWS_TENTHS_KG = 1e-4;

  /** Its trial. */
  public TrialForecast forecast() {
    return standing.forecast();
  }

  private PourCalendar calendar() {
    return PourCalendar.of(forecast().trial());
  }

  /** Its trial, and which plates of it, or how many, where several were poured. */
  public String who() {
    String which = plates().isEmpty() ? "" : ", " + plates();
    String howMany = standing.of() == 1 ? "" : " (" + standing.of() + " plates)";
    return forecast().trial().name() + (which.isEmpty() ? howMany : which);
  }

  /** The numbers of the plates of the pour; empty where it is all of them. */
  public String plates() {
    return standing.plates().size() == standing.of() ? "" : called(standing.plates());
  }

  /** Plates by their numbers, such as "plates 1, 3". */
  public static String called(List<Integer> numbers) {
    return (numbers.size() == 1 ? "plate " : "plates ") + numbers(numbers);
  }

  static String numbers(List<Integer> plates) {
    return plates.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  /** The need of the plate, as a word of style sheets and data files. */
  public String need() {
    return standing.need().name().toLowerCase(Locale.ROOT);
  }

  /** Returns whether nothing is to be done yet. */
  public boolean isWaiting() {
    return standing.need() == Need.WAIT;
  }

  /** The need and its reason, in one sentence; where it is wanted by a date, a second on that. */
  public String sentence() {
    return needed() + wanted().map(words -> " " + words).orElse("");
  }

  /** The chance that it is ready by the date its plan was made for. */
  public Optional<String> wanted() {
    OptionalDouble byS = forecast().trial().wanted().byS();
    if (byS.isEmpty() || standing.need() == Need.OVERDUE) {
      return Optional.empty();
    }
    return Optional.of(
        "Wanted by %s: in time in %s."
            .formatted(
                calendar().byTheHour(byS.getAsDouble()),
                PlanWords.casesBy(byS.getAsDouble(), standing.readyS())));
  }

  private String needed() {
    String who = who();
    double nowS = standing.nowS();
    Band readyS = standing.readyS();
    return switch (standing.need()) {
      case PEEL ->
          standing.isDryByTheScale()
              ? "Peel %s now: %s.".formatted(who, ready())
              : "Peel %s now: dry through by now in %s; %s."
                  .formatted(who, PlanWords.casesBy(nowS, readyS), ready());
      case OVERDUE ->
          "Check %s: it should have been ready by %s. Peel it, or note what became of it."
              .formatted(who, calendar().date(readyS.high(), nowS));
      case NEVER_DRIES -> who + ": " + Headline.of(forecast());
      case MOULDS_SOON, MOULDS_LATER -> {
        String dry =
            Double.isInfinite(readyS.middle()) ? "never" : "about " + calendar().range(readyS);
        String mould = near(standing.mouldFromS());
        yield nowS >= standing.mouldFromS()
            ? ("Check %s for mould: it may have shown since %s, and it is dry %s. If it shows none,"
                    + " dry it faster. %s")
                .formatted(who, mould, dry, relief())
            : "Dry %s faster: mould may show from %s on, and it is dry %s. %s"
                .formatted(who, mould, dry, relief());
      }
      case WEIGH ->
          "Weigh %s now: %s%s."
              .formatted(
                  who,
                  narrowing(),
                  standing.last().isPresent()
                      ? ""
                      : "; it has no weighing to go by yet"
                          + (standing.emptyKg().isPresent()
                              ? ""
                              : " (note what the plate weighs empty, too)"));
      case LOOK ->
          "Look at %s: it may be dry through at any time now%s; %s."
              .formatted(
                  who,
                  Double.isInfinite(readyS.high())
                      ? ""
                      : ", in 9 of 10 likely cases by " + near(readyS.high()),
                  ready());
      case WAIT -> "%s: next look %s; %s.".formatted(who, look(), ready());
    };
  }

  private String ready() {
    return "ready when %s %s%s"
        .formatted(
            standing.emptyKg().isPresent() ? "the scale shows" : "its film alone weighs",
            scale(standing.scale().kgAt(Milestone.DRY_THROUGH)),
            standing
                .last()
                .filter(Weighing::tared)
                .map(
                    last ->
                        ", it showed %s on %s"
                            .formatted(
                                scale(last.filmMassKg()), calendar().toTheMinute(last.timeS())))
                .orElse(""));
  }

  /** The effect of a weighing now on the range. */
  public String narrowing() {
    double left = standing.scale().rangeLeft();
    double widthS = standing.readyS().high() - Math.max(standing.readyS().low(), standing.nowS());
    String effect =
        left < 0.45
            ? "more than halves the range"
            : left <= 0.55 ? "halves the range" : "narrows the range";
    return Double.isInfinite(widthS)
        ? "that " + effect
        : "that %s of its drying time, from %s to about %s"
            .formatted(effect, Spans.of(widthS), Spans.of(left * widthS));
  }

  /** The day on which it is dry through, in the middle case. */
  String readyDate() {
    return Double.isInfinite(standing.readyS().middle())
        ? "never dry here"
        : "dry about " + calendar().date(standing.readyS().middle());
  }

  /** The hours in which to look. */
  public String look() {
    if (standing.need() == Need.PEEL || standing.need() == Need.OVERDUE) {
      return "now";
    }
    if (Double.isInfinite(standing.lookFromS())) {
      return "not in this room";
    }
    String window = calendar().window(standing.lookFromS(), standing.lookUntilS());
    boolean moved = standing.looksAroundNight() && window.contains(":");
    return moved ? window + " (" + WakingHours.WORDS + ")" : window;
  }

  /** The share of the water that is left. */
  public String waterLeft() {
    Band left = standing.waterLeft();
    return "about %s %% of its water is left%s"
        .formatted(
            PERCENT.whole(left.middle()),
            Figures.around(PERCENT.whole(left.low()), PERCENT.whole(left.high())));
  }

  /** The heading of the scale's figures: what is weighed. */
  public String scaleHead() {
    return standing.emptyKg().isPresent()
        ? "On the scale, plate included"
        : "The film alone (until the weight of the empty plate is noted, a first weighing does not"
            + " count)";
  }

  /** The expected reading of the scale now. */
  public String scaleNow() {
    Band now = standing.scale().nowKg();
    return scale(now.middle()) + Figures.around(figure(now.low()), figure(now.high()));
  }

  /** The expected reading of the scale when a milestone comes. */
  public String scaleAt(Milestone milestone) {
    return Double.isInfinite(standing.forecast().drying().timeS(milestone).middle())
        ? "never"
        : scale(standing.scale().kgAt(milestone));
  }

  /** The range at the pour, where weighings narrowed it. */
  public Optional<String> before() {
    return forecast().weighed().takenIn() == 0
        ? Optional.empty()
        : Optional.of(Spans.of(standing.readyAtThePourS()));
  }

  private String scale(double filmKg) {
    return figure(filmKg) + " g";
  }

  /** A mass as the scale shows it, with tenths where it shows tenths. */
  private String figure(double filmKg) {
    double grams = GRAM.of(filmKg + standing.emptyKg().orElse(0));
    boolean tenths = standing.last().filter(last -> last.massSdKg() < SHOWS_TENTHS_KG).isPresent();
    return tenths ? Figures.tenths(grams) : Figures.whole(grams);
  }

  /** What reruns show to help most, as far as it may be done. */
  private String relief() {
    boolean told = standing.relief().filter(one -> one.step().change() == Change.FAN).isPresent();
    boolean noFan = forecast().trial().recipe().glycerol().mayHoldMethanol() && !told;
    return standing
            .relief()
            .map(this::relief)
            .orElse("Neither moving, drier or warmer air nor a rack helps; pour thinner next time.")
        + (noFan ? " No fan: the glycerol may hold methanol." : "");
  }

  private String relief(Rerun relief) {
    ChangeStep step = relief.step();
    boolean rack = step.change() == Change.ONTO_A_RACK;
    String what =
        rack
            ? "a rack from "
                + near(step.after().faces().get(0).timeS())
                + " on, when it can be peeled"
            : RiskTable.remedy(forecast().trial(), step);
    double fromS = relief.risks().mould().expectedFromS();
    String then =
        Double.isInfinite(fromS)
            ? "no mould is to be expected"
            : fromS > Math.max(standing.nowS(), standing.mouldFromS())
                    && !near(fromS).equals(near(standing.mouldFromS()))
                ? "mould may show from " + near(fromS) + " on"
                : "";
    String effect =
        then.isEmpty()
            ? ", though mould may still show"
            : rack
                ? ": " + then + " then"
                : ": with it from the pour on " + then + ", from now on it helps less";
    return "What helps most is " + what + effect + ".";
  }

  /** The cautions for whoever dries it faster or finds it mouldy. */
  public List<Caution> cautions() {
    return switch (standing.need()) {
      case MOULDS_SOON, MOULDS_LATER -> List.of(Caution.FANS_AND_HEATERS, Caution.MOULD);
      case PEEL, OVERDUE, NEVER_DRIES, WEIGH, LOOK, WAIT -> List.of();
    };
  }

  /** Its curve with its weighings, and now. */
  public CurveFigure figure() {
    return DryingFigure.of(forecast(), OptionalDouble.of(standing.nowS()));
  }

  /** The readings of the curve, at even steps along its axis. */
  public List<String> readOuts() {
    return DryingFigure.readOuts(
        forecast(), OptionalDouble.of(standing.nowS()), standing.emptyKg());
  }

  /** The plate cut open now. */
  public SectionFigure section() {
    return new CutPlate(forecast()).at(standing.nowS());
  }

  /** The plate cut open from the pour until it is dry. */
  public List<SectionFigure> course() {
    return new CutPlate(forecast()).alongTime(standing);
  }

  /** The effect of the room, where it does not simply dry; may be empty. */
  public String advice() {
    return forecast().drying().verdict() == DryingVerdict.DRIES ? "" : Headline.of(forecast());
  }

  /** A moment, about the hour where it is within two days of now, else the day. */
  private String near(double atS) {
    return Math.abs(atS - standing.nowS()) < 2 * DAY_S
        ? calendar().window(atS, atS)
        : calendar().date(atS, standing.nowS());
  }
}
