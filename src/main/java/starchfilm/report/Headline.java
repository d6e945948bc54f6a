package starchfilm.report;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingVerdict;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RoomWords;

/** One trial's drying in one sentence. */
public final class Headline {
  /** Above this no moisture is stated (ratio), see {@code film.Withheld}. */
  private static final double MEASURED_UP_TO = 0.9;

  /** A bench that makes the air at the film so much damper is what keeps it wet (ratio). */
  private static final double DAMPER_BY_THE_BENCH = 0.05;

  /** A move at this share of the time in which one case of ten is firm is doubted; ours. */
  private static final double TOO_EARLY = 0.5;

  /** What fails in one case of ten is not stated in the head. */
  private static final double OFTEN = 0.9;

  /** What fails in most cases is said before its times. */
  private static final double HALF = 0.5;

  private Headline() {}

  /**
   * The sentence at the head of a trial.
   *
   * @param trial the trial
   * @return such as {@code Peelable Sat 28 Nov, about 9:00 (7–11); dry through in the thick spot
   *     Sun 29 Nov (Sat 28 Nov to Tue 1 Dec).}
   */
  public static String of(TrialForecast trial) {
    DryingVerdict verdict = trial.drying().verdict();
    if (verdict == DryingVerdict.TOO_DAMP) {
      String why =
          isOnColdBench(trial)
              ? "On this bench, colder than the air, the room is too damp to dry the film: it would"
                  + " settle at %s. A warmer bench or drier air is needed."
              : "This room is too damp to dry the film: it would settle at %s. Drier or warmer air"
                  + " is needed.";
      return why.formatted(moisture(trial));
    }
    if (verdict == DryingVerdict.NEVER_PEELABLE) {
      return ("Never peelable in this room: the film settles at %s, too soft and moist to peel."
              + " Drier air or less glycerol is needed.")
          .formatted(moisture(trial));
    }
    String times = peelable(trial) + "; " + dryThrough(trial) + ".";
    String soft = softCases(trial);
    return !soft.isEmpty() && peels(trial) < HALF
        ? "Probably never peelable all over in this room." + soft + " " + times
        : times + soft;
  }

  /** What stands below the head of a trial: the effect of its weighings, a move that is doubted. */
  public static List<String> hints(TrialForecast trial) {
    return Stream.of(takenIn(trial), liftedWet(trial)).flatMap(Optional::stream).toList();
  }

  /** Film is not lifted while it is as wet as paste; a slip of the pen says so. */
  private static Optional<String> liftedWet(TrialForecast trial) {
    double firmS = trial.drying().at(Spot.THIN_EDGE).at(Milestone.PEELABLE).timeS().low();
    return trial.casting().faces().stream()
        .filter(change -> change.open().lower())
        .filter(change -> Double.isFinite(firmS) && change.timeS() < TOO_EARLY * firmS)
        .findFirst()
        .map(
            change ->
                ("It is noted as %s; the forecast finds no spot firm enough to lift before about"
                        + " %s: is that time right?")
                    .formatted(FaceChange.words(List.of(change), ""), Spans.of(firmS)));
  }

  /** The effect of the plate's own weighings on the drying, where any were taken in. */
  private static Optional<String> takenIn(TrialForecast trial) {
    return trial.weighed().takenIn() == 0
        ? Optional.empty()
        : Optional.of(
            "With %s of this %s; forecast at the pour: peelable %s, thick spot dry through %s."
                .formatted(
                    Plural.of(trial.weighed().takenIn(), "weighing"),
                    trial.trial().weighedSiblings().isEmpty() ? "plate" : "pour",
                    after(trial.dryingAtThePour().peelableS()),
                    after(trial.dryingAtThePour().dryThroughS())));
  }

  /**
   * The chance that the thick spot is dry by a moment.
   *
   * @param trial the trial
   * @param byS the moment (s since the pour)
   * @return a sentence
   */
  public static String inTime(TrialForecast trial, double byS) {
    Band dry = trial.drying().dryThroughS();
    Optional<LocalDateTime> poured = trial.trial().pouredAt();
    String by =
        poured.isEmpty()
            ? "after " + Spans.given(byS)
            : "by " + new PourCalendar(poured).byTheHour(byS);
    return (dry.low() > byS ? "Not dry all through %s (%s)." : "Dry all through %s in %s.")
        .formatted(by, PlanWords.casesBy(byS, dry));
  }

  private static String after(Band band) {
    return Double.isInfinite(band.low()) ? "never" : "after " + Spans.of(band);
  }

  private static String peelable(TrialForecast trial) {
    Band band = trial.drying().peelableS();
    if (Double.isInfinite(band.low())) {
      return "Not peelable within the time computed";
    }
    if (Double.isInfinite(band.middle())) {
      return "Peelable after " + Spans.rough(band) + ", if at all";
    }
    return "Peelable "
        + PourCalendar.of(trial.trial()).range(band, trial.drying().dryThroughS().middle());
  }

  private static String dryThrough(TrialForecast trial) {
    Band band = trial.drying().dryThroughS();
    if (Double.isInfinite(band.low())) {
      return "the thick spot does not dry through within the time computed";
    }
    if (Double.isInfinite(band.middle())) {
      return "dry through in the thick spot after " + Spans.rough(band) + ", and perhaps never";
    }
    return "dry through in the thick spot " + PourCalendar.of(trial.trial()).range(band);
  }

  /** How often it stays too soft to peel, where that is to be reckoned with; may be empty. */
  private static String softCases(TrialForecast trial) {
    double peels = peels(trial);
    if (peels > OFTEN || Double.isInfinite(thickSpot(trial).timeS().high())) {
      return "";
    }
    return " In about "
        + Math.round(10 * (1 - peels))
        + " of 10 likely cases the thick spot never becomes firm enough to peel"
        + " in this room; the times are those of the other cases. Drier air or"
        + " less glycerol helps.";
  }

  private static MilestoneForecast thickSpot(TrialForecast trial) {
    return trial.drying().at(Spot.THICK_SPOT).at(Milestone.PEELABLE);
  }

  private static double peels(TrialForecast trial) {
    return thickSpot(trial).shareReached();
  }

  /** Nobody has measured what film holds in such air, and a rule would say anything. */
  static boolean restsBeyondMeasure(TrialForecast trial) {
    return trial.drying().restingActivity() > MEASURED_UP_TO;
  }

  private static boolean isOnColdBench(TrialForecast trial) {
    double air = RoomWords.dampness(trial.casting().room());
    return trial.casting().benchTemperatureK().isPresent()
        && trial.drying().restingActivity() > air + DAMPER_BY_THE_BENCH;
  }

  private static String moisture(TrialForecast trial) {
    if (restsBeyondMeasure(trial)) {
      return "more water than anybody has measured in film (none is stated above 90 % RH)";
    }
    return Figures.two(100 * trial.drying().equilibriumMoisture())
        + " g water per 100 g dry solids";
  }
}
